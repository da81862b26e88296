package org.ripewood.core.bench;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The minutes of a day without the breaks for all and the lesson, counted from 0.
 *
 * <p>Where a break was cut out the minutes before and after it meet: work alone may go on over such
 * a seam, and what begins at one begins after the break, as what ends at one ends before it.
 */
final class OpenTime {

    private final int fromMinute;
    private final int[] minutes;

    OpenTime(Span hours, List<Span> breaks) {
        this(hours.fromMinute(), hours.toMinute(), breaks);
    }

    /** The open minutes from one on; none where the day is over. */
    OpenTime(int fromMinute, int toMinute, List<Span> breaks) {
        this.fromMinute = fromMinute;
        minutes =
                IntStream.range(fromMinute, toMinute)
                        .filter(minute -> breaks.stream().noneMatch(span -> span.holds(minute)))
                        .toArray();
    }

    int length() {
        return minutes.length;
    }

    /** How many open minutes there are before a minute of the day. */
    int at(int minute) {
        int low = 0;
        int high = minutes.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (minutes[middle] < minute) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The minute of the day at which something begins. */
    int startMinute(int open) {
        return minutes[open];
    }

    /** The minute of the day at which something has ended. */
    int endMinute(int open) {
        return open == 0 ? fromMinute : minutes[open - 1] + 1;
    }

    /** Whether a break was cut out right before an open minute. */
    boolean seam(int open) {
        return open > 0 && open < minutes.length && minutes[open] != minutes[open - 1] + 1;
    }
}
