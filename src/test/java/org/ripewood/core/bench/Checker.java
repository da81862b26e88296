package org.ripewood.core.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.ripewood.core.bench.Timetable.Slot;
import org.ripewood.core.bench.WorkPhase.Kind;

/** Whether a plan keeps every rule, minute by minute, with none of the timetable's own code. */
final class Checker {

    private final ClassDay day;
    private final Underway underway;
    private final Timetable plan;
    private final String where;
    private final Map<String, Job> jobs = new HashMap<>();

    private Checker(ClassDay day, Underway underway, Timetable plan, String where) {
        this.day = day;
        this.underway = underway;
        this.plan = plan;
        this.where = where;
        day.jobs().forEach(job -> jobs.put(job.id(), job));
    }

    static void check(ClassDay day, Timetable plan, String where) {
        check(day, Underway.notBegun(), plan, where);
    }

    static void check(ClassDay day, Underway underway, Timetable plan, String where) {
        var checker = new Checker(day, underway, plan, where);
        plan.slots().stream().filter(slot -> !checker.begun(slot)).forEach(checker::slotKeepsTime);
        checker.nothingIsInTwoPlaces();
        checker.toolsAreThere();
        checker.everyJobIsDoneOrTold();
        checker.countsAreRight();
    }

    /** Begun, taken along with what has begun, or cut short as its student left. */
    private boolean begun(Slot slot) {
        return slot.span().fromMinute() < underway.nowMinute();
    }

    private WorkPhase phase(Slot slot) {
        return jobs.get(slot.job()).phases().get(slot.phase());
    }

    private boolean pause(int minute) {
        return day.breaks().stream().anyMatch(span -> span.holds(minute))
                || day.lesson().stream().anyMatch(span -> span.holds(minute));
    }

    private int openMinutes(int from, int to) {
        int open = 0;
        for (int minute = Math.max(from, day.hours().fromMinute());
                minute < Math.min(to, day.hours().toMinute());
                minute++) {
            open += pause(minute) ? 0 : 1;
        }
        return open;
    }

    private int arrival(String student) {
        int first = Integer.MAX_VALUE;
        for (var job : day.jobs()) {
            if (job.student().equals(student)) {
                first = Math.min(first, job.earliestMinute());
            }
        }
        int told = underway.arrivals().getOrDefault(student, 0);
        return Math.max(day.hours().fromMinute(), Math.max(first, told));
    }

    private void slotKeepsTime(Slot slot) {
        var phase = phase(slot);
        var job = jobs.get(slot.job());
        var said = "%s: %s as %s".formatted(where, slot, phase);
        int from = slot.span().fromMinute();
        int to = slot.span().toMinute();
        assertThat(underway.absent()).as(said).doesNotContain(job.student());
        assertThat(from)
                .as(said)
                .isGreaterThanOrEqualTo(underway.nowMinute())
                .isGreaterThanOrEqualTo(day.hours().fromMinute())
                .isGreaterThanOrEqualTo(job.earliestMinute())
                .isGreaterThanOrEqualTo(arrival(job.student()));
        assertThat(to).as(said).isLessThanOrEqualTo(day.hours().toMinute());
        assertThat(pause(from) || pause(to - 1)).as(said).isFalse();
        assertThat(openMinutes(from, to)).as(said).isEqualTo(phase.minutes());
        if (phase.kind() == Kind.ALONE) {
            assertThat(slot.instructor()).as(said).isNull();
            assertThat(pieces(from, to))
                    .as(said)
                    .allMatch(piece -> piece >= Math.min(10, phase.minutes()));
            return;
        }
        assertThat(to - from).as(said).isEqualTo(phase.minutes());
        assertThat(slot.instructor()).as(said).isNotNull();
        if (!phase.instructors().isEmpty()) {
            assertThat(phase.instructors()).as(said).contains(slot.instructor());
        }
        var teacher =
                day.instructors().stream()
                        .filter(one -> one.id().equals(slot.instructor()))
                        .findFirst()
                        .orElseThrow();
        for (int minute = from; minute < to; minute++) {
            int at = minute;
            assertThat(
                            teacher.available().stream().anyMatch(span -> span.holds(at))
                                    && teacher.breaks().stream().noneMatch(s -> s.holds(at)))
                    .as("%s at %d", said, at)
                    .isTrue();
        }
    }

    /** Minutes of work between breaks. */
    private List<Integer> pieces(int from, int to) {
        var pieces = new ArrayList<Integer>();
        int piece = 0;
        for (int minute = from; minute <= to; minute++) {
            if (minute == to || pause(minute)) {
                if (piece > 0) {
                    pieces.add(piece);
                }
                piece = 0;
            } else {
                piece++;
            }
        }
        return pieces;
    }

    private void nothingIsInTwoPlaces() {
        apart("student", slot -> jobs.get(slot.job()).student());
        apart("instructor", Slot::instructor);
    }

    private void apart(String what, Function<Slot, String> who) {
        var last = new HashMap<String, Slot>();
        for (var slot : plan.slots()) {
            var name = who.apply(slot);
            if (name == null) {
                continue;
            }
            var before = last.put(name, slot);
            if (before != null && !(begun(before) && begun(slot))) {
                assertThat(slot.span().fromMinute())
                        .as("%s: %s %s at %s and %s", where, what, name, before, slot)
                        .isGreaterThanOrEqualTo(before.span().toMinute());
            }
        }
    }

    private void toolsAreThere() {
        for (int minute = underway.nowMinute(); minute < Span.DAY_MINUTES; minute++) {
            var held = new TreeMap<String, Integer>();
            boolean onlyBegun = true;
            for (var slot : plan.slots()) {
                if (slot.span().holds(minute)) {
                    onlyBegun &= begun(slot);
                    phase(slot).tools().forEach(tool -> held.merge(tool, 1, Integer::sum));
                }
            }
            int at = minute;
            if (!onlyBegun) {
                held.forEach(
                        (tool, count) ->
                                assertThat(count)
                                        .as("%s: %s at %d", where, tool, at)
                                        .isLessThanOrEqualTo(day.tools().getOrDefault(tool, 0)));
            }
        }
    }

    private void everyJobIsDoneOrTold() {
        Set<String> told = new HashSet<>();
        for (var one : plan.leftOut()) {
            assertThat(told.add(one.job())).as("%s: %s told twice", where, one.job()).isTrue();
        }
        assertThat(jobs.keySet()).as(where).containsAll(told);
        int done = 0;
        for (var job : day.jobs()) {
            var slots = plan.slots().stream().filter(slot -> slot.job().equals(job.id())).toList();
            runsInOrder(job, slots);
            boolean whole = !slots.isEmpty() && last(slots).phase() == job.phases().size() - 1;
            assertThat(whole)
                    .as("%s: %s is done or told", where, job.id())
                    .isNotEqualTo(told.contains(job.id()));
            if (told.contains(job.id())) {
                assertThat(slots.stream().filter(slot -> !begun(slot)))
                        .as("%s: nothing more of %s", where, job.id())
                        .allMatch(slot -> goesOn(phase(slot)));
            }
            done += whole ? 1 : 0;
        }
        assertThat(plan.worth().jobs()).as(where).isEqualTo(done);
    }

    /** Done in one go with the phase before it. */
    private static boolean goesOn(WorkPhase phase) {
        return phase.cuts() || phase.kind() == Kind.ALONE;
    }

    private static Slot last(List<Slot> slots) {
        return slots.get(slots.size() - 1);
    }

    private void runsInOrder(Job job, List<Slot> slots) {
        for (int i = 0; i < slots.size(); i++) {
            var slot = slots.get(i);
            var said = "%s: %s".formatted(where, slot);
            if (i == 0) {
                assertThat(slot.phase()).as(said).isZero();
                continue;
            }
            var before = slots.get(i - 1);
            boolean again = slot.phase() == before.phase() && phase(slot).kind() == Kind.INSPECTION;
            assertThat(again || slot.phase() == before.phase() + 1).as(said).isTrue();
            assertThat(slot.span().fromMinute())
                    .as(said)
                    .isGreaterThanOrEqualTo(before.span().toMinute());
            var phase = job.phases().get(slot.phase());
            if (goesOn(phase) && !begun(slot) && !begun(before)) {
                assertThat(openMinutes(before.span().toMinute(), slot.span().fromMinute()))
                        .as("%s in one go with %s", said, before)
                        .isZero();
            }
            if (phase.cuts() && !begun(slot)) {
                assertThat(slot.span().fromMinute())
                        .as("%s right after its inspection", said)
                        .isEqualTo(before.span().toMinute());
                if (slot.instructor() != null) {
                    assertThat(slot.instructor()).as(said).isEqualTo(before.instructor());
                }
            }
        }
    }

    private void countsAreRight() {
        Map<String, Integer> ends = new HashMap<>();
        Map<String, Integer> worked = new HashMap<>();
        int finish = day.hours().fromMinute();
        for (var slot : plan.slots()) {
            var student = jobs.get(slot.job()).student();
            int to = slot.span().toMinute();
            ends.merge(student, to, Math::max);
            worked.merge(student, openMinutes(slot.span().fromMinute(), to), Integer::sum);
            finish = Math.max(finish, to);
        }
        assertThat(plan.finishMinute()).as(where).isEqualTo(finish);
        assertThat(plan.waitingMinutes().keySet()).as(where).isEqualTo(ends.keySet());
        long cost = openMinutes(0, finish) + 50L * changes() + 100L * returns();
        for (var student : ends.keySet()) {
            int inClass = openMinutes(arrival(student), ends.get(student));
            cost += 10L * inClass;
            assertThat(plan.waitingMinutes().get(student))
                    .as("%s: %s waits", where, student)
                    .isEqualTo(inClass - worked.get(student));
        }
        assertThat(plan.worth().cost()).as(where).isEqualTo(cost);
    }

    /** How often a student goes on with a tree after one of their others. */
    private int returns() {
        var last = new HashMap<String, Slot>();
        int returns = 0;
        for (var slot : plan.slots()) {
            var student = jobs.get(slot.job()).student();
            var before = last.put(student, slot);
            boolean other = before != null && !before.job().equals(slot.job());
            returns += other && slot.phase() > 0 ? 1 : 0;
        }
        return returns;
    }

    private int changes() {
        Map<String, String> before = new HashMap<>();
        underway.before().forEach(s -> before.put(s.job() + "#" + s.phase(), s.instructor()));
        var seen = new HashSet<String>();
        int changes = 0;
        for (var slot : plan.slots()) {
            var instructor = before.get(slot.job() + "#" + slot.phase());
            boolean counted = begun(slot) || slot.instructor() == null || instructor == null;
            boolean withCut =
                    phase(slot).cuts() && seen.contains(slot.job() + "#" + (slot.phase() - 1));
            if (!counted && !instructor.equals(slot.instructor()) && !withCut) {
                changes++;
                seen.add(slot.job() + "#" + slot.phase());
            }
        }
        return changes;
    }

    static List<String> done(ClassDay day, Timetable plan) {
        Collection<String> out = plan.leftOut().stream().map(LeftOut::job).toList();
        var done = new ArrayList<String>();
        day.jobs().stream().map(Job::id).filter(id -> !out.contains(id)).forEach(done::add);
        return done;
    }
}
