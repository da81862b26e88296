package org.ripewood.classday;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Span;
import org.ripewood.core.bench.WorkPhase;

/**
 * A timetable as people read it.
 *
 * @param from time from which on it was laid out; null for the whole day
 * @param waits of students, by time; their minutes add up to those of the plan
 * @param stale whether the work chosen has changed since, so that it is to be laid out anew
 */
public record TimetableShown(
        DayTimetable plan,
        @Nullable LocalTime from,
        List<Line> lines,
        List<Left> leftOut,
        List<Late> late,
        LocalTime finish,
        List<Wait> waits,
        boolean stale) {

    public TimetableShown {
        lines = List.copyOf(lines);
        leftOut = List.copyOf(leftOut);
        late = List.copyOf(late);
        waits = List.copyOf(waits);
    }

    List<Line> linesOf(long treeId) {
        return lines.stream().filter(line -> line.treeId() == treeId).toList();
    }

    List<Wait> waitsOf(long treeId) {
        return waits.stream().filter(wait -> wait.treeId() == treeId).toList();
    }

    /**
     * Work in one go, no break in it; the look before a cut and the cut are one.
     *
     * @param kind INSPECTION for a visit that begins with the look before a cut
     * @param instructor who stands by; null for work alone
     */
    public record Line(
            LocalTime from,
            LocalTime until,
            String bench,
            String student,
            long treeId,
            String tree,
            String technique,
            WorkPhase.Kind kind,
            boolean cuts,
            @Nullable String instructor) {

        /** What is done, in words. */
        public String what() {
            return switch (kind) {
                case ALONE -> cuts ? "cuts on their own" : "on their own";
                case HANDS_ON -> cuts ? "cut together" : "together";
                case INSPECTION ->
                        cuts ? "look before the cut, then the cut" : "look before the cut";
            };
        }

        /** Whether an instructor looks at a cut before it is made. */
        public boolean inspects() {
            return kind == WorkPhase.Kind.INSPECTION;
        }
    }

    /**
     * A student has nothing to do.
     *
     * @param treeId with which they go on
     */
    public record Wait(LocalTime from, LocalTime until, int minutes, String student, long treeId) {}

    /** Work without a place. */
    public record Left(String student, String tree, String technique, String because) {}

    /**
     * A student who comes late.
     *
     * @param at null for not at all
     */
    public record Late(String student, @Nullable LocalTime at) {}

    static TimetableShown of(DayTimetable plan, DayRead day) {
        var byTree = new HashMap<Long, TreeChoice>();
        day.choices().forEach(choice -> byTree.put(choice.enrolment().treeId(), choice));
        var lines = new ArrayList<Line>();
        var closed = new DayClosed(day);
        for (var stretch : Stretch.of(plan.slots())) {
            for (var piece : closed.without(stretch.fromMinute(), stretch.toMinute())) {
                lines.add(line(stretch.slot(), stretch.cuts(), piece, byTree, day));
            }
        }
        lines.sort(Comparator.comparing(Line::from).thenComparing(Line::until));
        var left =
                plan.leftOut().stream()
                        .map(
                                one ->
                                        new Left(
                                                student(byTree.get(one.treeId()), day),
                                                tree(byTree.get(one.treeId()), one.treeId()),
                                                day.content().titleOf(one.technique()),
                                                one.because()))
                        .toList();
        return new TimetableShown(
                plan,
                plan.fromMinute() == 0 ? null : Minutes.time(plan.fromMinute()),
                lines,
                left,
                late(plan, day),
                Minutes.time(plan.finishMinute()),
                closed.waits(plan),
                stale(plan, day));
    }

    private static Line line(
            DayTimetable.Slot slot,
            boolean cuts,
            Span at,
            Map<Long, TreeChoice> byTree,
            DayRead day) {
        var instructor = slot.instructorId();
        var choice = byTree.get(slot.treeId());
        return new Line(
                Minutes.time(at.fromMinute()),
                Minutes.time(at.toMinute()),
                choice == null ? "" : choice.enrolment().bench(),
                student(choice, day),
                slot.treeId(),
                tree(choice, slot.treeId()),
                day.content().titleOf(slot.technique()),
                slot.kind(),
                cuts,
                instructor == null
                        ? null
                        : day.names().getOrDefault(instructor, "Person " + instructor));
    }

    private static List<Late> late(DayTimetable plan, DayRead day) {
        var late = new ArrayList<Late>();
        for (var row : plan.arrivals()) {
            var at = row.atMinute();
            late.add(
                    new Late(
                            day.names().getOrDefault(row.personId(), "Person " + row.personId()),
                            at == null ? null : Minutes.time(at)));
        }
        return late;
    }

    /**
     * Once the day goes on, what is done is an option no more, and the plan is not stale for it.
     */
    private static boolean stale(DayTimetable plan, DayRead day) {
        if (plan.fromMinute() > 0) {
            return false;
        }
        var planned = new HashSet<String>();
        plan.slots().forEach(slot -> planned.add(DayJobs.id(slot.treeId(), slot.technique())));
        plan.leftOut().forEach(left -> planned.add(DayJobs.id(left.treeId(), left.technique())));
        var chosen = new HashSet<String>();
        day.chosen().stream()
                .filter(one -> !DayJobs.isSmall(one.technique()))
                .forEach(one -> chosen.add(DayJobs.id(one.treeId(), one.technique().code())));
        return !planned.equals(chosen);
    }

    private static String student(@Nullable TreeChoice choice, DayRead day) {
        return choice == null ? "" : day.names().getOrDefault(choice.enrolment().personId(), "");
    }

    private static String tree(@Nullable TreeChoice choice, long treeId) {
        return choice == null ? "Tree " + treeId : choice.work().tree().label();
    }
}
