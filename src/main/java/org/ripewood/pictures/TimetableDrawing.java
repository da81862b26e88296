package org.ripewood.pictures;

import java.util.List;

/**
 * A class day on the benches. Minutes are those of the day.
 *
 * @param of what day it is, in words
 * @param fromMinute when the class begins
 * @param toMinute when it ends
 * @param breaks for all
 * @param benches in the order one walks along them
 */
public record TimetableDrawing(
        String of, int fromMinute, int toMinute, List<Pause> breaks, List<Bench> benches) {

    private static final int DAY_MINUTES = 1440;

    /** How a phase is worked. */
    public enum Kind {
        ALONE,
        TOGETHER,
        INSPECTION
    }

    /** A break. */
    public record Pause(int fromMinute, int toMinute) {}

    /** A tree at a bench and what is done with it. */
    public record Bench(String bench, String tree, List<Phase> phases) {
        public Bench {
            phases = List.copyOf(phases);
        }
    }

    /**
     * A phase.
     *
     * @param instructor who stands by; empty for nobody
     */
    public record Phase(int fromMinute, int toMinute, Kind kind, boolean cuts, String instructor) {
        public Phase {
            if (!(fromMinute >= 0 && fromMinute < toMinute && toMinute <= DAY_MINUTES)) {
                throw new IllegalArgumentException(
                        "a phase begins before it ends, within a day, found %d to %d"
                                .formatted(fromMinute, toMinute));
            }
        }
    }

    /**
     * @throws IllegalArgumentException when the class ends before it begins
     */
    public TimetableDrawing {
        breaks = List.copyOf(breaks);
        benches = List.copyOf(benches);
        if (!(fromMinute >= 0 && fromMinute < toMinute && toMinute <= DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "a class begins before it ends, within a day, found %d to %d"
                            .formatted(fromMinute, toMinute));
        }
    }
}
