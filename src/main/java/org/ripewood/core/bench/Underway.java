package org.ripewood.core.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How far a class day has got, so that only what has not begun is moved.
 *
 * @param nowMinute of the day; nothing is planned before it
 * @param begun phases that are done or running, with their real times; of a running one the end is
 *     the one expected
 * @param absent students who are not there, or have left
 * @param arrivals by student who comes later than the jobs say, the minute of the day
 * @param before slots of the plan in force; their instructors are kept where that costs little
 */
public record Underway(
        int nowMinute,
        List<Timetable.Slot> begun,
        Set<String> absent,
        Map<String, Integer> arrivals,
        List<Timetable.Slot> before) {

    public Underway {
        if (!(nowMinute >= 0 && nowMinute <= Span.DAY_MINUTES)) {
            throw new IllegalArgumentException(
                    "now lies between 0 and %d, found %d".formatted(Span.DAY_MINUTES, nowMinute));
        }
        begun = List.copyOf(begun);
        absent = Set.copyOf(absent);
        arrivals = Map.copyOf(arrivals);
        before = List.copyOf(before);
        for (var slot : begun) {
            if (slot.span().fromMinute() > nowMinute) {
                throw new IllegalArgumentException(
                        "%s has begun by %d, found %s"
                                .formatted(slot.job(), nowMinute, slot.span()));
            }
        }
    }

    /** A day on which nothing has begun. */
    public static Underway notBegun() {
        return new Underway(0, List.of(), Set.of(), Map.of(), List.of());
    }

    /** A day that went by the plan until now. */
    public static Underway following(Timetable plan, int nowMinute) {
        var begun =
                plan.slots().stream().filter(slot -> slot.span().fromMinute() < nowMinute).toList();
        return new Underway(nowMinute, begun, Set.of(), Map.of(), plan.slots());
    }

    /** The same, but a student is not there any more. */
    public Underway without(String student) {
        var more = new HashSet<>(absent);
        more.add(student);
        return new Underway(nowMinute, begun, more, arrivals, before);
    }

    /** The same, but a student comes at a minute of the day. */
    public Underway arriving(String student, int minute) {
        var more = new HashMap<>(arrivals);
        more.put(student, minute);
        return new Underway(nowMinute, begun, absent, more, before);
    }

    /** The same, but the last begun phase of a job ends at a minute of the day. */
    public Underway ending(String job, int toMinute) {
        var changed = new ArrayList<>(begun);
        for (int i = changed.size() - 1; i >= 0; i--) {
            var slot = changed.get(i);
            if (slot.job().equals(job)) {
                var span = new Span(slot.span().fromMinute(), toMinute);
                changed.set(i, new Timetable.Slot(job, slot.phase(), slot.instructor(), span));
                return new Underway(nowMinute, changed, absent, arrivals, before);
            }
        }
        throw new IllegalArgumentException("nothing of %s has begun".formatted(job));
    }
}
