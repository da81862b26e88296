package org.ripewood.api.content;

import java.util.Locale;
import org.ripewood.course.Species;

/** A species in a list. */
record SpeciesLine(String code, String latin, String common, String habit) {

    static SpeciesLine of(Species species) {
        return new SpeciesLine(
                species.code(),
                species.latin(),
                species.common(),
                species.traits().habit().name().toLowerCase(Locale.ROOT));
    }
}
