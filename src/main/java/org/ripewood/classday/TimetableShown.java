package org.ripewood.classday;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.WorkPhase;

/**
 * A timetable as people read it.
 *
 * @param from time from which on it was laid out; null for the whole day
 * @param stale whether the work chosen has changed since, so that it is to be laid out anew
 */
public record TimetableShown(
        DayTimetable plan,
        @Nullable LocalTime from,
        List<Line> lines,
        List<Left> leftOut,
        List<Late> late,
        LocalTime finish,
        boolean stale) {

    public TimetableShown {
        lines = List.copyOf(lines);
        leftOut = List.copyOf(leftOut);
        late = List.copyOf(late);
    }

    /**
     * One phase.
     *
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
                case ALONE -> cuts ? "cuts alone" : "works alone";
                case HANDS_ON -> cuts ? "cuts together" : "works together";
                case INSPECTION -> "shows the cut first";
            };
        }
    }

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
        for (var slot : plan.slots()) {
            var instructor = slot.instructorId();
            var choice = byTree.get(slot.treeId());
            lines.add(
                    new Line(
                            Minutes.time(slot.fromMinute()),
                            Minutes.time(slot.toMinute()),
                            choice == null ? "" : choice.enrolment().bench(),
                            student(choice, day),
                            slot.treeId(),
                            tree(choice, slot.treeId()),
                            day.content().titleOf(slot.technique()),
                            slot.kind(),
                            slot.cuts(),
                            instructor == null
                                    ? null
                                    : day.names()
                                            .getOrDefault(instructor, "Person " + instructor)));
        }
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
                stale(plan, day));
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
        day.chosen().forEach(one -> chosen.add(DayJobs.id(one.treeId(), one.technique().code())));
        return !planned.equals(chosen);
    }

    private static String student(@Nullable TreeChoice choice, DayRead day) {
        return choice == null ? "" : day.names().getOrDefault(choice.enrolment().personId(), "");
    }

    private static String tree(@Nullable TreeChoice choice, long treeId) {
        return choice == null ? "Tree " + treeId : choice.work().tree().label();
    }
}
