package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/**
 * One piece of work on one tree, as it stands on the day's timetable.
 *
 * @param id names it; unique on the day
 * @param student whose tree it is; a student does one thing at a time
 * @param usefulness from {@code 0} to {@link #MOST_USEFUL}: which is left out last where not all
 *     can be done
 * @param earliestMinute of the day, when the student is there
 * @param phases in the order they are done; one that cuts follows an inspection
 */
public record Job(
        String id, String student, double usefulness, int earliestMinute, List<WorkPhase> phases) {

    public static final double MOST_USEFUL = 1000;

    /** More phases than this are a mistake. */
    public static final int MOST_PHASES = 12;

    /** Work is laid out in steps of so many minutes: common practice, no source. */
    public static final int STEP_MINUTES = 5;

    /** What is shorter has no place of its own on a timetable: common practice, no source. */
    public static final int LEAST_MINUTES = 10;

    public Job {
        JobIds.require("a job", id);
        JobIds.require("a student", student);
        if (!(usefulness >= 0 && usefulness <= MOST_USEFUL)) {
            throw new IllegalArgumentException(
                    "usefulness runs from 0 to %s, found %s in %s"
                            .formatted(MOST_USEFUL, usefulness, id));
        }
        if (!(earliestMinute >= 0 && earliestMinute < Span.DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "a job begins between 0 and %d, found %d in %s"
                            .formatted(Span.DAY_MINUTES, earliestMinute, id));
        }
        phases = List.copyOf(phases);
        if (phases.isEmpty() || phases.size() > MOST_PHASES) {
            throw new IllegalArgumentException(
                    "a job has from 1 to %d phases, found %d in %s"
                            .formatted(MOST_PHASES, phases.size(), id));
        }
        for (int i = 0; i < phases.size(); i++) {
            if (phases.get(i).cuts()) {
                requireInspectedCut(id, phases, i);
            }
        }
    }

    /** Who looks at a cut stands by it, where somebody does. */
    private static void requireInspectedCut(String id, List<WorkPhase> phases, int cut) {
        if (cut == 0 || phases.get(cut - 1).kind() != WorkPhase.Kind.INSPECTION) {
            throw new IllegalArgumentException(
                    "an inspection comes right before phase %d of %s, which cuts"
                            .formatted(cut + 1, id));
        }
        var one = phases.get(cut - 1).instructors();
        var other = phases.get(cut).instructors();
        var both = new HashSet<>(one);
        both.retainAll(other);
        if (!one.isEmpty() && !other.isEmpty() && both.isEmpty()) {
            throw new IllegalArgumentException(
                    "nobody may both inspect and stand by phase %d of %s, found %s and %s"
                            .formatted(cut + 1, id, one, other));
        }
    }

    /** Minutes of work of all phases. */
    public int minutes() {
        return phases.stream().mapToInt(WorkPhase::minutes).sum();
    }

    /** Minutes of work with an instructor. */
    public int instructorMinutes() {
        return phases.stream()
                .filter(phase -> phase.kind().needsInstructor())
                .mapToInt(WorkPhase::minutes)
                .sum();
    }

    boolean begins(int phase) {
        return phase == 0 || !phases.get(phase).cuts();
    }

    /**
     * How a piece of work usually runs, in steps of {@value #STEP_MINUTES} minutes: the student
     * prepares alone for a third of their own time, the instructor comes, the student goes on
     * alone.
     *
     * <p>Minutes are rounded up, and no part is shorter than {@value #LEAST_MINUTES}: a shorter
     * preparation is left to after the visit. An instructor's minutes below that are a look in
     * passing, which has no place of its own ({@link #passingMinutes}), unless something is cut
     * that does not grow back: then the visit is as long as that, its first {@value #STEP_MINUTES}
     * minutes the look before the cut. Source of the shares: common practice, no source.
     *
     * @param studentMinutes all the student's time at the tree, the instructor's included
     * @param instructorMinutes from 0 to {@code studentMinutes}; at least 1 for a cut
     */
    public static List<WorkPhase> usualPhases(
            int studentMinutes, int instructorMinutes, boolean irreversible) {
        if (!(instructorMinutes >= (irreversible ? 1 : 0) && instructorMinutes <= studentMinutes)) {
            throw new IllegalArgumentException(
                    "an instructor's minutes run from %d to the student's %d, found %d"
                            .formatted(irreversible ? 1 : 0, studentMinutes, instructorMinutes));
        }
        int taught = visitMinutes(instructorMinutes, irreversible);
        int own = Math.max(0, onTheClock(studentMinutes) - taught);
        own = own == 0 ? 0 : Math.max(LEAST_MINUTES, own);
        if (taught == 0) {
            return List.of(WorkPhase.alone(own));
        }
        int before = own / 3 / STEP_MINUTES * STEP_MINUTES;
        before = before < LEAST_MINUTES ? 0 : before;
        var phases = new ArrayList<WorkPhase>();
        if (before > 0) {
            phases.add(WorkPhase.alone(before));
        }
        if (irreversible) {
            phases.add(WorkPhase.inspection(STEP_MINUTES));
            phases.add(WorkPhase.handsOn(taught - STEP_MINUTES).cutting());
        } else {
            phases.add(WorkPhase.handsOn(taught));
        }
        if (own > before) {
            phases.add(WorkPhase.alone(own - before));
        }
        return phases;
    }

    /** Minutes as they stand on a timetable: whole steps, and none below the least. */
    public static int onTheClock(int minutes) {
        return Math.max(LEAST_MINUTES, (minutes + STEP_MINUTES - 1) / STEP_MINUTES * STEP_MINUTES);
    }

    /** What an instructor's minutes take on the timetable; 0 for a look in passing, or none. */
    private static int visitMinutes(int instructorMinutes, boolean irreversible) {
        return irreversible || instructorMinutes >= LEAST_MINUTES
                ? onTheClock(instructorMinutes)
                : 0;
    }

    /** An instructor's minutes that have no place of their own on the timetable. */
    public static int passingMinutes(int instructorMinutes, boolean irreversible) {
        return visitMinutes(instructorMinutes, irreversible) == 0 ? instructorMinutes : 0;
    }
}
