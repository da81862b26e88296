package org.ripewood.classday;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Timetable;
import org.ripewood.core.bench.WorkPhase;

/**
 * The timetable of a class day as it was laid out. Minutes are those of the day.
 *
 * @param revision 1 for the first; the highest is in force
 * @param fromMinute from when on it was laid out; what lies before had happened
 * @param waitingMinutes of all students together
 * @param worth how good it is, and how good it could be
 */
public record DayTimetable(
        long id,
        long sessionId,
        int revision,
        int fromMinute,
        List<Slot> slots,
        List<LeftOut> leftOut,
        List<Arrival> arrivals,
        int finishMinute,
        int waitingMinutes,
        Timetable.Worth worth,
        long madeBy,
        Instant madeAt) {

    public DayTimetable {
        slots = List.copyOf(slots);
        leftOut = List.copyOf(leftOut);
        arrivals = List.copyOf(arrivals);
    }

    /**
     * A phase in its place.
     *
     * @param phase 0 for the first of its work
     * @param instructorId who stands by; null for work alone
     */
    public record Slot(
            long treeId,
            String technique,
            int phase,
            WorkPhase.Kind kind,
            boolean cuts,
            @Nullable Long instructorId,
            int fromMinute,
            int toMinute) {}

    /** Work without a place, and why. */
    public record LeftOut(long treeId, String technique, String because) {}

    /**
     * A student who comes late or not at all.
     *
     * @param atMinute null for not at all
     */
    public record Arrival(long personId, @Nullable Integer atMinute) {}
}
