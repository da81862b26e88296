package org.ripewood.core.season;

import java.time.LocalDate;

/**
 * Days from one to another, both included.
 *
 * @param from first day
 * @param to last day, not before the first
 */
public record Span(LocalDate from, LocalDate to) {

    public Span {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(
                    "a span does not end before it begins, found %s to %s".formatted(from, to));
        }
    }

    /** Whether a day lies in the span. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /** Whether the two have a day in common. */
    public boolean meets(Span other) {
        return !other.to.isBefore(from) && !other.from.isAfter(to);
    }
}
