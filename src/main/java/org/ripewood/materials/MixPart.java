package org.ripewood.materials;

import jakarta.persistence.Embeddable;

/** A substrate's parts in a mix. */
@Embeddable
class MixPart {

    long substrateId;
    double parts;

    MixPart() {}

    MixPart(long substrateId, double parts) {
        this.substrateId = substrateId;
        this.parts = parts;
    }
}
