package org.ripewood.web.courses;

import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.SessionPlan;
import org.ripewood.classday.TimetableShown;
import org.ripewood.core.bench.Span;
import org.ripewood.pictures.Picture;
import org.ripewood.pictures.Sheet;
import org.ripewood.pictures.TimetablePicture;
import org.ripewood.pictures.Units;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;

/** What the page of a class day shows. */
record DayPageModel(SessionPlan plan, FormState typed) {

    private static final int HOUR = 60;

    static DayPageModel of(SessionPlan plan, FormState typed) {
        return new DayPageModel(plan, typed);
    }

    /** As wide as the page is at a desk. */
    private static final Sheet FULL = new Sheet(1120, false, Units.METRIC);

    /** Where an instructor has to be, by time. */
    public record Strip(String instructor, List<TimetableShown.Line> lines) {}

    public List<SessionPlan.BenchDay> benches() {
        return plan.benches();
    }

    /** A strip for each instructor; none before the day is laid out. */
    public List<Strip> strips() {
        var table = plan.timetable();
        return table == null
                ? List.of()
                : plan.instructors().stream()
                        .map(
                                name ->
                                        new Strip(
                                                name,
                                                table.lines().stream()
                                                        .filter(
                                                                line ->
                                                                        name.equals(
                                                                                line.instructor()))
                                                        .toList()))
                        .toList();
    }

    /** Students who come, each once. */
    public Map<Long, String> students() {
        var students = new LinkedHashMap<Long, String>();
        for (var enrolment : plan.session().enrolments()) {
            plan.rows().stream()
                    .filter(row -> row.treeId() == enrolment.treeId())
                    .findFirst()
                    .ifPresent(row -> students.put(enrolment.personId(), row.student()));
        }
        return students;
    }

    public @Nullable TimetableShown timetable() {
        return plan.timetable();
    }

    /** The day on the benches; null before it is laid out. */
    public @Nullable PictureFormat picture() {
        return laidOut() ? PictureFormat.of(this::drawn) : null;
    }

    /** The same as wide as a desk's page; null before it is laid out. */
    public @Nullable Picture full() {
        return laidOut() ? drawn(FULL) : null;
    }

    private boolean laidOut() {
        var table = plan.timetable();
        return table != null && !table.lines().isEmpty();
    }

    private Picture drawn(Sheet sheet) {
        return TimetablePicture.of(DayDrawing.of(plan), sheet);
    }

    /** When the lesson is held. */
    public List<String> lessonAt() {
        return plan.lessonAt().stream().map(DayPageModel::told).toList();
    }

    public List<String> breaks() {
        return plan.breaks().stream().map(DayPageModel::told).toList();
    }

    private static String told(Span span) {
        return "%s to %s".formatted(clock(span.fromMinute()), clock(span.toMinute()));
    }

    private static LocalTime clock(int minute) {
        return LocalTime.of(minute / HOUR % 24, minute % HOUR);
    }
}
