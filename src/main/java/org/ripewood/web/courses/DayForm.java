package org.ripewood.web.courses;

import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.NewTimetable;
import org.ripewood.core.bench.Span;
import org.ripewood.platform.problems.Refused;

/**
 * How a day is laid out, as typed on its page: students who come late at one time, trees that run
 * on until one time, one break.
 */
record DayForm(
        @Nullable LocalTime now,
        @Nullable @Size(max = 200) List<@NotNull Long> absent,
        @Nullable @Size(max = 200) List<@NotNull Long> late,
        @Nullable LocalTime lateAt,
        @Nullable @Size(max = 200) List<@NotNull Long> overruns,
        @Nullable LocalTime overrunUntil,
        @Nullable LocalTime breakFrom,
        @Nullable LocalTime breakUntil,
        boolean noBreak,
        @Nullable LocalTime lessonAt,
        @Nullable @Min(1) @Max(Span.DAY_MINUTES) Integer lessonMinutes,
        boolean noLesson) {

    NewTimetable asked() {
        return new NewTimetable(now, absent, lateComers(), overrunning(), breaks(), lesson());
    }

    private static boolean none(@Nullable List<Long> chosen) {
        return chosen == null || chosen.isEmpty();
    }

    private @Nullable List<NewTimetable.Late> lateComers() {
        var students = late;
        var at = lateAt;
        if (students == null || none(students)) {
            refuseAlone("lateAt", at, "Expected the students who arrive at %s; none is ticked.");
            return null;
        }
        if (at == null) {
            throw Refused.invalid("lateAt", "Expected the time the ticked students arrive.");
        }
        return students.stream().map(id -> new NewTimetable.Late(id, at)).toList();
    }

    private @Nullable List<NewTimetable.Overrun> overrunning() {
        var trees = overruns;
        var until = overrunUntil;
        if (trees == null || none(trees)) {
            refuseAlone(
                    "overrunUntil",
                    until,
                    "Expected the trees that run on until %s; none is ticked.");
            return null;
        }
        if (until == null) {
            throw Refused.invalid(
                    "overrunUntil", "Expected the time until which the ticked trees run on.");
        }
        return trees.stream().map(id -> new NewTimetable.Overrun(id, until)).toList();
    }

    private static void refuseAlone(String field, @Nullable LocalTime time, String words) {
        if (time != null) {
            throw Refused.invalid(field, words.formatted(time));
        }
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

    private NewTimetable.@Nullable Lesson lesson() {
        if (noLesson) {
            return new NewTimetable.Lesson(null, 0);
        }
        return lessonAt == null && lessonMinutes == null
                ? null
                : new NewTimetable.Lesson(lessonAt, lessonMinutes);
    }
}
