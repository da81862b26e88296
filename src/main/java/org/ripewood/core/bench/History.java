package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Timetable.Slot;

/**
 * What has begun on a day, checked, and what follows for the rest of it.
 *
 * <p>A phase that runs, or ends just now, takes along what is done in one go with it: the cut after
 * an inspection, with whoever stands by, and what the student then does alone. That begins as the
 * one before ends, unless a tool, the instructor's hours or a break come in between. An inspection
 * without its cut is repeated.
 */
final class History {

    private final ClassDay day;
    private final Underway underway;
    private final int now;
    private final Map<String, Job> jobs = new HashMap<>();
    private final Map<String, List<Slot>> slots = new HashMap<>();

    History(ClassDay day, Underway underway) {
        this.day = day;
        this.underway = underway;
        this.now = Math.max(day.hours().fromMinute(), underway.nowMinute());
        day.jobs().forEach(job -> jobs.put(job.id(), job));
        var inOrder = new ArrayList<>(underway.begun());
        inOrder.sort(
                Comparator.comparing(Slot::job)
                        .thenComparing(slot -> slot.span().fromMinute())
                        .thenComparing(Slot::phase));
        inOrder.forEach(this::add);
        new TreeSet<>(slots.keySet()).forEach(this::takeRestAlong);
    }

    private void add(Slot slot) {
        var job = jobs.get(slot.job());
        if (job == null) {
            throw new IllegalArgumentException(
                    "%s has begun and is not on the day".formatted(slot.job()));
        }
        var before = slots.computeIfAbsent(slot.job(), unseen -> new ArrayList<>());
        int last = before.isEmpty() ? -1 : before.get(before.size() - 1).phase();
        boolean again =
                slot.phase() == last && job.phases().get(last).kind() == WorkPhase.Kind.INSPECTION;
        if (!(slot.phase() == last + 1 && slot.phase() < job.phases().size()) && !again) {
            throw new IllegalArgumentException(
                    "phase %d of %s began after phase %d"
                            .formatted(slot.phase(), slot.job(), last));
        }
        before.add(slot);
    }

    private void takeRestAlong(String id) {
        var job = get(id);
        var begun = begun(id);
        boolean taken = true;
        while (taken) {
            var last = begun.get(begun.size() - 1);
            int next = last.phase() + 1;
            taken =
                    next < job.phases().size()
                            && goesOn(job, next)
                            && last.span().toMinute() >= now
                            && !absent(job.student())
                            && takeAlong(job, next, last, begun);
        }
    }

    /** Whether a phase is done in one go with the one before. */
    private static boolean goesOn(Job job, int phase) {
        return job.phases().get(phase).cuts() || !job.phases().get(phase).kind().needsInstructor();
    }

    private boolean takeAlong(Job job, int next, Slot last, List<Slot> begun) {
        int from = last.span().toMinute();
        var phase = job.phases().get(next);
        boolean taught = phase.kind().needsInstructor();
        int to = taught ? from + phase.minutes() : endAlone(from, phase.minutes());
        var by = taught ? last.instructor() : null;
        boolean fits = to <= day.hours().toMinute() && undisturbed(job.id(), phase, by, from, to);
        if (fits) {
            begun.add(new Slot(job.id(), next, by, new Span(from, to)));
        }
        return fits;
    }

    private int endAlone(int from, int minutes) {
        var open = new OpenTime(from, day.hours().toMinute(), day.closed());
        boolean atOnce = open.length() >= minutes && open.startMinute(0) == from;
        return atOnce ? open.endMinute(minutes) : Span.DAY_MINUTES + 1;
    }

    private boolean undisturbed(
            String id, WorkPhase phase, @Nullable String instructor, int from, int to) {
        for (int minute = from; minute < to; minute++) {
            for (var tool : phase.tools()) {
                if (toolsHeld(tool, minute) >= day.tools().getOrDefault(tool, 0)) {
                    return false;
                }
            }
            if (instructor != null && !free(instructor, minute)) {
                return false;
            }
            if (busy(get(id).student(), minute)) {
                return false;
            }
        }
        return true;
    }

    private boolean free(String instructor, int minute) {
        return day.closed().stream().noneMatch(span -> span.holds(minute))
                && day.instructors().stream()
                        .anyMatch(one -> one.id().equals(instructor) && one.teachesAt(minute))
                && !teaches(instructor, minute);
    }

    private boolean busy(String student, int minute) {
        return told().stream()
                .anyMatch(
                        slot ->
                                get(slot.job()).student().equals(student)
                                        && slot.span().holds(minute));
    }

    private Job get(String id) {
        var job = jobs.get(id);
        if (job == null) {
            throw new IllegalArgumentException(id + " is not on the day");
        }
        return job;
    }

    private List<Slot> begun(String id) {
        return slots.getOrDefault(id, List.of());
    }

    /** The first minute that can still be planned. */
    int now() {
        return now;
    }

    boolean absent(String student) {
        return underway.absent().contains(student);
    }

    /** Every slot that has begun or is taken along; a student who left ends now. */
    List<Slot> told() {
        var told = new ArrayList<Slot>();
        new TreeSet<>(slots.keySet()).forEach(id -> begun(id).forEach(slot -> tell(slot, told)));
        return told;
    }

    private void tell(Slot slot, List<Slot> told) {
        var span = slot.span();
        if (!absent(get(slot.job()).student()) || span.toMinute() <= now) {
            told.add(slot);
        } else if (span.fromMinute() < now) {
            var until = new Span(span.fromMinute(), now);
            told.add(new Slot(slot.job(), slot.phase(), slot.instructor(), until));
        }
    }

    /** Which job of a student began last; null when none has. */
    @Nullable String lastBegun(String student) {
        return told().stream()
                .filter(slot -> get(slot.job()).student().equals(student))
                .max(Comparator.comparingInt(slot -> slot.span().fromMinute()))
                .map(Slot::job)
                .orElse(null);
    }

    int firstOpenPhase(Job job) {
        var begun = begun(job.id());
        if (begun.isEmpty()) {
            return 0;
        }
        int last = begun.get(begun.size() - 1).phase();
        boolean repeated = last + 1 < job.phases().size() && job.phases().get(last + 1).cuts();
        return repeated ? last : last + 1;
    }

    /** When a student comes: with the first of their jobs, or later when that is said. */
    int arrivalMinute(String student) {
        int first =
                day.jobs().stream()
                        .filter(job -> job.student().equals(student))
                        .mapToInt(Job::earliestMinute)
                        .min()
                        .orElseThrow();
        int told = underway.arrivals().getOrDefault(student, first);
        return Math.max(day.hours().fromMinute(), Math.max(first, told));
    }

    /** When a job may go on: not before its student is there and has ended what runs. */
    int readyMinute(Job job) {
        int ready = Math.max(Math.max(now, job.earliestMinute()), arrivalMinute(job.student()));
        for (var slot : told()) {
            if (get(slot.job()).student().equals(job.student())) {
                ready = Math.max(ready, slot.span().toMinute());
            }
        }
        return ready;
    }

    boolean teaches(String instructor, int minute) {
        return told().stream()
                .anyMatch(
                        slot -> instructor.equals(slot.instructor()) && slot.span().holds(minute));
    }

    int toolsHeld(String tool, int minute) {
        return (int)
                told().stream()
                        .filter(slot -> slot.span().holds(minute))
                        .filter(
                                slot ->
                                        get(slot.job())
                                                .phases()
                                                .get(slot.phase())
                                                .tools()
                                                .contains(tool))
                        .count();
    }

    /** Where a phase stands in the plan in force. */
    @Nullable Slot before(String job, int phase) {
        return underway.before().stream()
                .filter(slot -> slot.job().equals(job) && slot.phase() == phase)
                .reduce((first, second) -> second)
                .orElse(null);
    }
}
