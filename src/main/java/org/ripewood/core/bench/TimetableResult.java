package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ripewood.core.bench.Timetable.Slot;
import org.ripewood.core.bench.Timetable.Worth;

/** Turns a plan into the minutes of a day, with all that is left out and why. */
final class TimetableResult {

    private final DayModel model;
    private final Plan plan;
    private final Bounds bounds;

    /** Open minutes of the whole day, what has gone by of it included. */
    private final OpenTime whole;

    private TimetableResult(DayModel model, Plan plan, Bounds bounds) {
        this.model = model;
        this.plan = plan;
        this.bounds = bounds;
        this.whole = new OpenTime(model.day.hours(), model.day.closed());
    }

    static Timetable tell(DayModel model, Plan plan, Bounds bounds, Timetable.Found found) {
        return new TimetableResult(model, plan, bounds).timetable(found);
    }

    private Timetable timetable(Timetable.Found found) {
        var slots = new ArrayList<>(model.history.told());
        for (int b = 0; b < model.blocks.size(); b++) {
            if (plan.start(b) >= 0) {
                addSlots(b, slots);
            }
        }
        slots.sort(
                Comparator.comparingInt((Slot slot) -> slot.span().fromMinute())
                        .thenComparing(Slot::job)
                        .thenComparing(Slot::phase));
        int finish =
                slots.stream()
                        .mapToInt(slot -> slot.span().toMinute())
                        .max()
                        .orElse(model.day.hours().fromMinute());
        var leftOut = leftOut();
        return new Timetable(slots, leftOut, waiting(slots), finish, worth(slots, finish, found));
    }

    private void addSlots(int b, List<Slot> slots) {
        var block = model.blocks.get(b);
        int at = plan.start(b);
        var job = model.jobs.get(block.job());
        for (int i = 0; i < block.phases().size(); i++) {
            var phase = block.phases().get(i);
            int end = at + phase.minutes();
            boolean taught = phase.kind().needsInstructor();
            slots.add(
                    new Slot(
                            job.id(),
                            block.firstPhase() + i,
                            taught ? model.day.instructors().get(plan.by(b)).id() : null,
                            new Span(model.open.startMinute(at), model.open.endMinute(end))));
            at = end;
        }
    }

    private Map<String, String> studentsOfJobs() {
        var students = new HashMap<String, String>();
        model.day.jobs().forEach(job -> students.put(job.id(), job.student()));
        return students;
    }

    private int openMinutes(Span span) {
        return whole.at(span.toMinute()) - whole.at(span.fromMinute());
    }

    /** By student the open minutes from arrival to the end of the last work. */
    private Map<String, Integer> inClass(List<Slot> slots) {
        var students = studentsOfJobs();
        var ends = new TreeMap<String, Integer>();
        for (var slot : slots) {
            ends.merge(students.get(slot.job()), whole.at(slot.span().toMinute()), Math::max);
        }
        ends.replaceAll(
                (student, end) ->
                        Math.max(0, end - whole.at(model.history.arrivalMinute(student))));
        return ends;
    }

    private Map<String, Integer> waiting(List<Slot> slots) {
        var students = studentsOfJobs();
        var waiting = inClass(slots);
        for (var slot : slots) {
            waiting.computeIfPresent(
                    students.get(slot.job()),
                    (student, minutes) -> Math.max(0, minutes - openMinutes(slot.span())));
        }
        return waiting;
    }

    private Worth worth(List<Slot> slots, int finish, Timetable.Found found) {
        int already = 0;
        int done = 0;
        for (int j = 0; j < model.jobs.size(); j++) {
            var job = model.jobs.get(j);
            done += plan.done(j) ? 1 : 0;
            already += model.history.firstOpenPhase(job) == job.phases().size() ? 1 : 0;
        }
        long cost =
                (long) Worth.FINISH * whole.at(finish)
                        + (long) Worth.CHANGE * changes()
                        + (long) Worth.RETURN * returns(slots, studentsOfJobs());
        for (int minutes : inClass(slots).values()) {
            cost += (long) Worth.WAITING * minutes;
        }
        long gone = cost - Bounds.costOfDone(model, plan);
        return new Worth(
                already + done,
                already + bounds.mostJobs(),
                cost,
                Math.max(0, gone + bounds.leastCost()),
                found);
    }

    private int changes() {
        int changes = 0;
        for (int b = 0; b < model.blocks.size(); b++) {
            int before = model.blocks.get(b).before();
            changes += plan.by(b) >= 0 && before >= 0 && before != plan.by(b) ? 1 : 0;
        }
        return changes;
    }

    /** How often a student goes on with a tree after another; in what has begun, too. */
    private static int returns(List<Slot> slots, Map<String, String> students) {
        var last = new HashMap<String, String>();
        int returns = 0;
        for (var slot : slots) {
            var before = last.put(students.get(slot.job()), slot.job());
            boolean other = before != null && !before.equals(slot.job());
            returns += other && slot.phase() > 0 ? 1 : 0;
        }
        return returns;
    }

    private List<LeftOut> leftOut() {
        var leftOut = new ArrayList<>(model.impossible);
        for (int j : model.todo()) {
            if (!plan.done(j)) {
                leftOut.add(new LeftOut(model.jobs.get(j).id(), noRoom(j)));
            }
        }
        var usefulness = new HashMap<String, Double>();
        model.day.jobs().forEach(job -> usefulness.put(job.id(), job.usefulness()));
        leftOut.sort(
                Comparator.comparing((LeftOut one) -> usefulness.get(one.job()))
                        .thenComparing(LeftOut::job));
        return leftOut;
    }

    private LeftOut.Reason noRoom(int j) {
        int asked = 0;
        for (int b = model.firstBlock[j]; b < model.firstBlock[j + 1]; b++) {
            asked += model.blocks.get(b).taughtMinutes();
        }
        int left = 0;
        for (var away : model.away) {
            for (int at = 0; at < model.length(); at++) {
                left += away.holds(at) ? 0 : 1;
            }
        }
        for (int b = 0; b < model.blocks.size(); b++) {
            left -= plan.start(b) >= 0 ? model.blocks.get(b).taughtMinutes() : 0;
        }
        long done = Arrays.stream(model.todo()).filter(job -> plan.done(job)).count();
        return new LeftOut.NoRoom(done == bounds.mostJobs(), asked, left);
    }
}
