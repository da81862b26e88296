package org.ripewood.core.bench;

import java.util.Set;

/**
 * A part of a piece of work that is done in one go.
 *
 * <p>Only a student's work alone may pause, over a break for all or the lesson, and only where at
 * least {@value Job#LEAST_MINUTES} minutes of it lie on either side; whatever needs an instructor
 * does not. Tools stay at the bench from its start to its end.
 *
 * @param minutes of work, without breaks
 * @param instructors who may stand by; empty when anybody may, or nobody has to
 * @param tools one of each is needed from start to end
 * @param cuts whether something is taken off that does not grow back
 */
public record WorkPhase(
        Kind kind, int minutes, Set<String> instructors, Set<String> tools, boolean cuts) {

    /** Who is at the tree. */
    public enum Kind {
        /** The student alone. */
        ALONE,
        /** The student and an instructor, working together. */
        HANDS_ON,
        /** The student shows an instructor what is about to be cut. */
        INSPECTION;

        boolean needsInstructor() {
            return this != ALONE;
        }
    }

    public WorkPhase {
        if (!(minutes > 0 && minutes <= Span.DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "a phase takes from 1 to %d minutes, found %d"
                            .formatted(Span.DAY_MINUTES, minutes));
        }
        if (cuts && kind == Kind.INSPECTION) {
            throw new IllegalArgumentException("nothing is cut while it is inspected");
        }
        instructors = Set.copyOf(instructors);
        tools = Set.copyOf(tools);
        if (kind == Kind.ALONE && !instructors.isEmpty()) {
            throw new IllegalArgumentException(
                    "a student alone needs no instructor, found " + instructors);
        }
    }

    public static WorkPhase alone(int minutes) {
        return new WorkPhase(Kind.ALONE, minutes, Set.of(), Set.of(), false);
    }

    public static WorkPhase handsOn(int minutes) {
        return new WorkPhase(Kind.HANDS_ON, minutes, Set.of(), Set.of(), false);
    }

    public static WorkPhase inspection(int minutes) {
        return new WorkPhase(Kind.INSPECTION, minutes, Set.of(), Set.of(), false);
    }

    /** The same with one of each of these tools. */
    public WorkPhase with(String... names) {
        return new WorkPhase(kind, minutes, instructors, Set.of(names), cuts);
    }

    /** The same under the eyes of one of these instructors. */
    public WorkPhase by(String... ids) {
        return new WorkPhase(kind, minutes, Set.of(ids), tools, cuts);
    }

    /** The same, and it cannot be undone. */
    public WorkPhase cutting() {
        return new WorkPhase(kind, minutes, instructors, tools, true);
    }
}
