package org.ripewood.core.season;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A kind of work whose season is said once of a species, and followed by every technique. */
public enum WorkClock {
    /** Whatever cuts roots: repotting, the next container, a circling root. */
    ROOT_WORK,
    /** Twigs and small branches. */
    SMALL_CUTS,
    /** Thick branches. */
    LARGE_CUTS,
    /** The trunk itself. */
    CHOP,
    /** Wire on branches and twigs. */
    WIRING,
    FEEDING,
    /** Bark taken off living wood. */
    DEADWOOD;

    /** Its name in content files. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The clock of a code; empty for others. */
    public static Optional<WorkClock> find(String code) {
        return Stream.of(values()).filter(clock -> clock.code().equals(code)).findFirst();
    }
}
