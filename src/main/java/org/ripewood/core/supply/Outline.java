package org.ripewood.core.supply;

/** The shape of a container or of a root ball seen from above. */
public enum Outline {
    ROUND,
    OVAL,
    RECTANGULAR
}
