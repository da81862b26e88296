package org.ripewood.print;

import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import org.ripewood.classday.SessionPlan;
import org.ripewood.classday.TimetableShown;
import org.ripewood.core.bench.Span;
import org.ripewood.core.bench.WorkPhase;
import org.ripewood.pictures.TimetableDrawing;
import org.ripewood.steps.Wording;

/** Lays a class day's timetable out for its picture. */
final class PlanDrawing {

    private static final int HOUR = 60;

    private PlanDrawing() {}

    static TimetableDrawing of(SessionPlan plan) {
        var session = plan.session();
        var lesson = plan.lesson();
        return new TimetableDrawing(
                Wording.day(session.heldOn()),
                minute(session.startsAt()),
                minute(session.endsAt()),
                pauses(plan.breaks()),
                lesson == null ? "" : lesson.title(),
                pauses(plan.lessonAt()),
                plan.benches().stream()
                        .filter(SessionPlan.BenchDay::onTheClock)
                        .map(PlanDrawing::bench)
                        .toList(),
                plan.instructors());
    }

    private static List<TimetableDrawing.Pause> pauses(List<Span> spans) {
        return spans.stream()
                .map(one -> new TimetableDrawing.Pause(one.fromMinute(), one.toMinute()))
                .toList();
    }

    private static TimetableDrawing.Bench bench(SessionPlan.BenchDay bench) {
        return new TimetableDrawing.Bench(
                bench.first().bench(),
                bench.first().tree(),
                bench.first().student(),
                bench.lines().stream().map(PlanDrawing::phase).toList(),
                bench.waits().stream()
                        .map(
                                wait ->
                                        new TimetableDrawing.Pause(
                                                minute(wait.from()), minute(wait.until())))
                        .toList());
    }

    private static TimetableDrawing.Phase phase(TimetableShown.Line line) {
        return new TimetableDrawing.Phase(
                minute(line.from()),
                minute(line.until()),
                kind(line.kind()),
                line.technique(),
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
