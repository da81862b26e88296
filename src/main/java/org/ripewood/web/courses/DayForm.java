package org.ripewood.web.courses;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.NewTimetable;
import org.ripewood.platform.problems.Refused;

/**
 * How a day is laid out, as typed on its page: one student late, one tree running on, one break at
 * a time.
 */
record DayForm(
        @Nullable LocalTime now,
        @Nullable @Size(max = 200) List<@NotNull Long> absent,
        @Nullable Long late,
        @Nullable LocalTime lateAt,
        @Nullable Long overruns,
        @Nullable LocalTime overrunUntil,
        @Nullable LocalTime breakFrom,
        @Nullable LocalTime breakUntil,
        boolean noBreak) {

    NewTimetable asked() {
        return new NewTimetable(now, absent, lateComers(), overrunning(), breaks());
    }

    private @Nullable List<NewTimetable.Late> lateComers() {
        if (late == null && lateAt == null) {
            return null;
        }
        if (late == null || lateAt == null) {
            throw Refused.invalid("late", "Expected a student and the time they come.");
        }
        return List.of(new NewTimetable.Late(late, lateAt));
    }

    private @Nullable List<NewTimetable.Overrun> overrunning() {
        if (overruns == null && overrunUntil == null) {
            return null;
        }
        if (overruns == null || overrunUntil == null) {
            throw Refused.invalid(
                    "overruns", "Expected a tree and the time until which its work runs on.");
        }
        return List.of(new NewTimetable.Overrun(overruns, overrunUntil));
    }

    private @Nullable List<NewTimetable.Break> breaks() {
        if (noBreak) {
            return List.of();
        }
        if (breakFrom == null && breakUntil == null) {
            return null;
        }
        if (breakFrom == null || breakUntil == null) {
            throw Refused.invalid("breaks", "Expected the beginning and the end of the break.");
        }
        return List.of(new NewTimetable.Break(breakFrom, breakUntil));
    }
}
