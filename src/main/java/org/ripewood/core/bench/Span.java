package org.ripewood.core.bench;

/**
 * A stretch of a day.
 *
 * @param fromMinute minutes since midnight, the first one in it
 * @param toMinute the first minute after it
 */
public record Span(int fromMinute, int toMinute) {

    /** A day's minutes. */
    public static final int DAY_MINUTES = 1440;

    public Span {
        if (!(fromMinute >= 0 && fromMinute < toMinute && toMinute <= DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "a span begins before it ends and lies between 0 and %d, found %d to %d"
                            .formatted(DAY_MINUTES, fromMinute, toMinute));
        }
    }

    public int minutes() {
        return toMinute - fromMinute;
    }

    boolean holds(int minute) {
        return fromMinute <= minute && minute < toMinute;
    }
}
