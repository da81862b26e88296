package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.ripewood.core.season.GrowingDays;

/** By what evidence of a fact grows old. */
public enum Ages {
    /** By growing days: what changes as the tree grows, and not while it rests. */
    GROWTH,
    /** By days of the calendar: what comes and goes whatever the tree does. */
    DAYS,
    /** Not at all: plans, wishes, and what the record itself knows. */
    NEVER;

    /** Days that count since something was seen; 0 when that was not before {@code on}. */
    public long between(LocalDate seenOn, LocalDate on, GrowingDays growing) {
        return switch (this) {
            case GROWTH -> growing.between(seenOn, on);
            case DAYS -> Math.max(0, ChronoUnit.DAYS.between(seenOn, on));
            case NEVER -> 0;
        };
    }
}
