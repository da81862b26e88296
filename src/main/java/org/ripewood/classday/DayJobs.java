package org.ripewood.classday;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.bench.Job;
import org.ripewood.core.bench.WorkPhase;
import org.ripewood.course.Technique;

/** Turns chosen work into jobs of a timetable, and back. */
final class DayJobs {

    /** One piece of chosen work. */
    record Chosen(long personId, long treeId, Technique technique, double usefulness) {}

    private final Map<String, Chosen> chosen = new HashMap<>();
    private final List<Job> jobs = new ArrayList<>();

    /**
     * @param scarce in small letters, tools of which the school counts how many it has; everybody
     *     has the others
     */
    DayJobs(Collection<Chosen> work, Set<String> scarce) {
        for (var one : work) {
            var id = id(one.treeId(), one.technique().code());
            if (isSmall(one.technique())) {
                continue;
            }
            if (chosen.putIfAbsent(id, one) == null) {
                jobs.add(job(id, one, scarce));
            }
        }
    }

    static String id(long treeId, String technique) {
        return treeId + "/" + technique;
    }

    List<Job> jobs() {
        return List.copyOf(jobs);
    }

    Chosen chosen(String job) {
        var found = chosen.get(job);
        if (found == null) {
            throw new IllegalStateException("no work chosen for " + job);
        }
        return found;
    }

    WorkPhase phase(String job, int phase) {
        return find(job).orElseThrow().phases().get(phase);
    }

    private Optional<Job> find(String job) {
        return jobs.stream().filter(one -> one.id().equals(job)).findFirst();
    }

    /** Whether a phase laid out before is still one of this day's work. */
    boolean knows(DayTimetable.Slot slot) {
        var phases = find(id(slot.treeId(), slot.technique())).map(Job::phases).orElse(List.of());
        return slot.phase() < phases.size()
                && phases.get(slot.phase()).kind() == slot.kind()
                && phases.get(slot.phase()).cuts() == slot.cuts();
    }

    /** Too short for a place of its own on the timetable; it is done in between. */
    static boolean isSmall(Technique technique) {
        return technique.studentMinutes() < Job.LEAST_MINUTES
                && technique.instructorMinutes() < Job.LEAST_MINUTES
                && !technique.irreversible();
    }

    /** How long an instructor looks in beside the timetable; 0 when the visit stands on it. */
    static int passingMinutes(Technique technique) {
        return Job.passingMinutes(technique.instructorMinutes(), technique.irreversible());
    }

    /** All the student's time, as it stands on the timetable. */
    static int minutes(Technique technique) {
        return isSmall(technique)
                ? studentMinutes(technique)
                : usual(technique).stream().mapToInt(WorkPhase::minutes).sum();
    }

    /** An instructor's time, as it stands on the timetable or beside it. */
    static int taughtMinutes(Technique technique) {
        int passing = passingMinutes(technique);
        return passing > 0
                ? passing
                : usual(technique).stream()
                        .filter(phase -> phase.kind() != WorkPhase.Kind.ALONE)
                        .mapToInt(WorkPhase::minutes)
                        .sum();
    }

    private static List<WorkPhase> usual(Technique technique) {
        return Job.usualPhases(
                studentMinutes(technique), instructorMinutes(technique), technique.irreversible());
    }

    /** An instructor looks at what cannot be undone, however short that takes. */
    private static int instructorMinutes(Technique technique) {
        return Math.max(technique.irreversible() ? 1 : 0, technique.instructorMinutes());
    }

    /** All the student's time, the instructor's included. */
    private static int studentMinutes(Technique technique) {
        return Math.max(1, Math.max(instructorMinutes(technique), technique.studentMinutes()));
    }

    /** How long each scarce tool is in use. */
    static Map<String, Integer> toolMinutes(Technique technique, Set<String> scarce) {
        var minutes = new HashMap<String, Integer>();
        for (var phase : phases(technique, scarce)) {
            phase.tools().forEach(tool -> minutes.merge(tool, phase.minutes(), Integer::sum));
        }
        return minutes;
    }

    private static Job job(String id, Chosen one, Set<String> scarce) {
        return new Job(
                id,
                Long.toString(one.personId()),
                one.usefulness(),
                0,
                phases(one.technique(), scarce));
    }

    private static List<WorkPhase> phases(Technique technique, Set<String> scarce) {
        var tools =
                technique.tools().stream()
                        .map(tool -> tool.toLowerCase(Locale.ROOT))
                        .filter(scarce::contains)
                        .collect(Collectors.toSet());
        return withTools(usual(technique), tools);
    }

    /** A scarce tool is at the bench while an instructor works along or something is cut. */
    private static List<WorkPhase> withTools(List<WorkPhase> phases, Set<String> tools) {
        if (tools.isEmpty()) {
            return phases;
        }
        var names = tools.stream().sorted().toArray(String[]::new);
        boolean anyUsing = phases.stream().anyMatch(DayJobs::uses);
        return phases.stream()
                .map(phase -> !anyUsing || uses(phase) ? phase.with(names) : phase)
                .toList();
    }

    private static boolean uses(WorkPhase phase) {
        return phase.cuts() || phase.kind() == WorkPhase.Kind.HANDS_ON;
    }
}
