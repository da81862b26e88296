package org.ripewood.pictures;

import java.util.List;

/**
 * A class day on the benches. Minutes are those of the day.
 *
 * @param of what day it is, in words
 * @param fromMinute when the class begins
 * @param toMinute when it ends
 * @param breaks for all
 * @param lesson what all are taught together; empty for none
 * @param lessonAt when; several stretches where a break falls into it
 * @param benches in the order one walks along them
 * @param instructors who stand by, in the order they are told
 */
public record TimetableDrawing(
        String of,
        int fromMinute,
        int toMinute,
        List<Pause> breaks,
        String lesson,
        List<Pause> lessonAt,
        List<Bench> benches,
        List<String> instructors) {

    private static final int DAY_MINUTES = 1440;

    /** How work is done. */
    public enum Kind {
        ALONE,
        TOGETHER,
        /** An instructor looks before a cut, and stays for the cut. */
        INSPECTION
    }

    /** A break, a stretch of the lesson, or a wait. */
    public record Pause(int fromMinute, int toMinute) {}

    /**
     * A tree at a bench and what is done with it.
     *
     * @param waits when its student has nothing to do before going on with it
     */
    public record Bench(
            String bench, String tree, String student, List<Phase> phases, List<Pause> waits) {
        public Bench {
            phases = List.copyOf(phases);
            waits = List.copyOf(waits);
        }
    }

    /**
     * Work in one go.
     *
     * @param work what is done, in words
     * @param instructor who stands by; empty for nobody
     */
    public record Phase(int fromMinute, int toMinute, Kind kind, String work, String instructor) {
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
        lessonAt = List.copyOf(lessonAt);
        benches = List.copyOf(benches);
        instructors = List.copyOf(instructors);
        if (!(fromMinute >= 0 && fromMinute < toMinute && toMinute <= DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "a class begins before it ends, within a day, found %d to %d"
                            .formatted(fromMinute, toMinute));
        }
    }

    /** The same with some of its benches alone, for one of several sheets. */
    public TimetableDrawing with(List<Bench> some) {
        return new TimetableDrawing(
                of, fromMinute, toMinute, breaks, lesson, lessonAt, some, instructors);
    }
}
