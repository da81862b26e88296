package org.ripewood.classday;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ripewood.core.bench.Span;

/** A day with the breaks and the lesson taken out of it. */
final class DayClosed {

    private final DayRead day;
    private final List<Span> closed;

    DayClosed(DayRead day) {
        this.day = day;
        this.closed = new ArrayList<>(Minutes.around(day.breaks()));
        this.closed.addAll(day.lessonAt());
    }

    private boolean open(int minute) {
        return closed.stream()
                .noneMatch(one -> one.fromMinute() <= minute && minute < one.toMinute());
    }

    /** What is left of a stretch of the day, in order. */
    List<Span> without(int fromMinute, int toMinute) {
        var pieces = new ArrayList<Span>();
        int since = -1;
        for (int minute = fromMinute; minute <= toMinute; minute++) {
            if (minute < toMinute && open(minute)) {
                since = since < 0 ? minute : since;
            } else if (since >= 0) {
                pieces.add(new Span(since, minute));
                since = -1;
            }
        }
        return pieces;
    }

    /** When students have nothing to do between coming and the end of their last work. */
    List<TimetableShown.Wait> waits(DayTimetable plan) {
        var students = new HashMap<Long, Long>();
        for (var one : day.session().enrolments()) {
            students.put(one.treeId(), one.personId());
        }
        Map<Long, List<DayTimetable.Slot>> work = new TreeMap<>();
        for (var slot : plan.slots()) {
            var student = students.get(slot.treeId());
            if (student != null) {
                work.computeIfAbsent(student, any -> new ArrayList<>()).add(slot);
            }
        }
        var waits = new ArrayList<TimetableShown.Wait>();
        work.forEach((student, slots) -> add(waits, student, slots, arrival(plan, student)));
        waits.sort(
                Comparator.comparing(TimetableShown.Wait::from)
                        .thenComparing(TimetableShown.Wait::student));
        return waits;
    }

    private int arrival(DayTimetable plan, long student) {
        int begin = Minutes.steps(Minutes.hours(day.session())).fromMinute();
        return plan.arrivals().stream()
                .filter(one -> one.personId() == student)
                .map(DayTimetable.Arrival::atMinute)
                .filter(at -> at != null)
                .mapToInt(at -> Math.max(begin, Minutes.up(at)))
                .findFirst()
                .orElse(begin);
    }

    private void add(
            List<TimetableShown.Wait> waits,
            long student,
            List<DayTimetable.Slot> slots,
            int arrival) {
        int since = arrival;
        for (var slot : slots) {
            if (slot.fromMinute() > since) {
                for (var piece : without(since, slot.fromMinute())) {
                    waits.add(
                            new TimetableShown.Wait(
                                    Minutes.time(piece.fromMinute()),
                                    Minutes.time(piece.toMinute()),
                                    piece.minutes(),
                                    day.names().getOrDefault(student, "Person " + student),
                                    slot.treeId()));
                }
            }
            since = Math.max(since, slot.toMinute());
        }
    }
}
