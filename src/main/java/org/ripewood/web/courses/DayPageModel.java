package org.ripewood.web.courses;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.SessionPlan;
import org.ripewood.classday.TimetableShown;
import org.ripewood.core.bench.Span;
import org.ripewood.pictures.TimetablePicture;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;

/** What the page of a class day shows. */
record DayPageModel(SessionPlan plan, FormState typed) {

    private static final int HOUR = 60;

    static DayPageModel of(SessionPlan plan, FormState typed) {
        return new DayPageModel(plan, typed);
    }

    /** A bench with one tree and all its work. */
    public record Bench(SessionPlan.Row first, List<SessionPlan.Row> rows) {}

    public List<Bench> benches() {
        Map<Long, List<SessionPlan.Row>> byTree = new LinkedHashMap<>();
        for (var row : plan.rows()) {
            byTree.computeIfAbsent(row.treeId(), any -> new ArrayList<>()).add(row);
        }
        return byTree.values().stream().map(rows -> new Bench(rows.get(0), rows)).toList();
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
        var table = plan.timetable();
        if (table == null || table.lines().isEmpty()) {
            return null;
        }
        var drawing = DayDrawing.of(plan, table);
        return PictureFormat.of(sheet -> TimetablePicture.of(drawing, sheet));
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
