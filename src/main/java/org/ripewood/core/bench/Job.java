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

    /** What an inspection before a cut takes: common practice, no source. */
    private static final int INSPECTION_MINUTES = 5;

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
     * How a piece of work usually runs: the student prepares alone for a third of their own time,
     * the instructor comes, the student goes on alone.
     *
     * <p>Work that cannot be undone has an inspection of 5 minutes, or of all the instructor's
     * minutes where they are fewer, and then the cut: hands-on for what is left of the instructor's
     * minutes, or by the student alone for a third of their own time. Source of the shares: common
     * practice, no source.
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
        int own = studentMinutes - instructorMinutes;
        if (instructorMinutes == 0) {
            return List.of(WorkPhase.alone(studentMinutes));
        }
        int before = own / 3;
        int inspection = irreversible ? Math.min(INSPECTION_MINUTES, instructorMinutes) : 0;
        int together = instructorMinutes - inspection;
        int cutAlone = irreversible && together == 0 ? own / 3 : 0;
        var phases = new ArrayList<WorkPhase>();
        if (before > 0) {
            phases.add(WorkPhase.alone(before));
        }
        if (irreversible) {
            phases.add(WorkPhase.inspection(inspection));
        }
        if (together > 0) {
            var handsOn = WorkPhase.handsOn(together);
            phases.add(irreversible ? handsOn.cutting() : handsOn);
        }
        if (cutAlone > 0) {
            phases.add(WorkPhase.alone(cutAlone).cutting());
        }
        if (own - before - cutAlone > 0) {
            phases.add(WorkPhase.alone(own - before - cutAlone));
        }
        return phases;
    }
}
