package org.ripewood.classday;

/** What an instructor wants of a tree on a class day, against what would be chosen by itself. */
public enum DayWish {
    /** This work, whatever else it could do. */
    PIN,
    /** Not this work. */
    DROP,
    /** As if nothing had been said. */
    NONE
}
