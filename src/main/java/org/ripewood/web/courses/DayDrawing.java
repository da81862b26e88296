package org.ripewood.web.courses;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import org.ripewood.classday.SessionPlan;
import org.ripewood.classday.TimetableShown;
import org.ripewood.core.bench.WorkPhase;
import org.ripewood.pictures.TimetableDrawing;
import org.ripewood.web.kit.TextFormat;

/** Lays a class day's timetable out for its picture. */
final class DayDrawing {

    private static final int HOUR = 60;

    private DayDrawing() {}

    static TimetableDrawing of(SessionPlan plan, TimetableShown table) {
        var phases = new LinkedHashMap<Long, List<TimetableDrawing.Phase>>();
        var benches = new ArrayList<TimetableDrawing.Bench>();
        table.lines()
                .forEach(
                        line ->
                                phases.computeIfAbsent(line.treeId(), any -> new ArrayList<>())
                                        .add(phase(line)));
        // In the order of the benches, those without a phase left out.
        for (var row : plan.rows()) {
            var ofTree = phases.remove(row.treeId());
            if (ofTree != null) {
                benches.add(new TimetableDrawing.Bench(row.bench(), row.tree(), ofTree));
            }
        }
        var session = plan.session();
        return new TimetableDrawing(
                TextFormat.day(session.heldOn()),
                minute(session.startsAt()),
                minute(session.endsAt()),
                plan.breaks().stream()
                        .map(
                                pause ->
                                        new TimetableDrawing.Pause(
                                                pause.fromMinute(), pause.toMinute()))
                        .toList(),
                benches);
    }

    private static TimetableDrawing.Phase phase(TimetableShown.Line line) {
        return new TimetableDrawing.Phase(
                minute(line.from()),
                minute(line.until()),
                kind(line.kind()),
                line.cuts(),
                Objects.requireNonNullElse(line.instructor(), ""));
    }

    private static TimetableDrawing.Kind kind(WorkPhase.Kind kind) {
        return switch (kind) {
            case ALONE -> TimetableDrawing.Kind.ALONE;
            case HANDS_ON -> TimetableDrawing.Kind.TOGETHER;
            case INSPECTION -> TimetableDrawing.Kind.INSPECTION;
        };
    }

    private static int minute(LocalTime time) {
        return time.getHour() * HOUR + time.getMinute();
    }
}
