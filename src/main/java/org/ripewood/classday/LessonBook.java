package org.ripewood.classday;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.bench.Span;
import org.ripewood.course.Lesson;
import org.ripewood.sessions.Session;

/**
 * When the lesson is held. Nothing kept means the usual: first, and as long as the lesson takes
 * (common practice, no source).
 */
@ApplicationScoped
class LessonBook implements PanacheRepositoryBase<DayLessonEntity, Long> {

    /** The lesson's minutes; several spans where a break falls into it, none without a lesson. */
    List<Span> of(Session session, @Nullable Lesson lesson, List<Span> breaks) {
        if (lesson == null) {
            return List.of();
        }
        var kept = findById(session.id());
        return kept == null
                ? spans(session, lesson, null, null, breaks)
                : spans(session, lesson, kept.fromMinute, kept.minutes, breaks);
    }

    void keep(long sessionId, NewTimetable.Lesson asked) {
        var kept = findById(sessionId);
        var row = kept == null ? new DayLessonEntity() : kept;
        var at = asked.at();
        row.sessionId = sessionId;
        row.fromMinute = at == null ? null : Minutes.of(at);
        row.minutes = asked.minutes();
        if (kept == null) {
            persist(row);
        }
    }

    /** The same for what is only asked for yet. */
    static List<Span> asked(
            Session session,
            @Nullable Lesson lesson,
            NewTimetable.Lesson asked,
            List<Span> breaks) {
        var at = asked.at();
        return lesson == null
                ? List.of()
                : spans(
                        session,
                        lesson,
                        at == null ? null : Minutes.of(at),
                        asked.minutes(),
                        breaks);
    }

    /** Open minutes from one on, breaks left out, no longer than the day. */
    private static List<Span> spans(
            Session session,
            Lesson lesson,
            @Nullable Integer fromMinute,
            @Nullable Integer minutes,
            List<Span> breaks) {
        var hours = Minutes.hours(session);
        int left = Minutes.up(minutes == null ? lesson.minutes() : minutes);
        int at = fromMinute == null ? hours.fromMinute() : Minutes.down(fromMinute);
        var spans = new ArrayList<Span>();
        int since = -1;
        for (int minute = Math.max(at, hours.fromMinute()); minute <= hours.toMinute(); minute++) {
            boolean open = left > 0 && minute < hours.toMinute() && !pause(breaks, minute);
            if (open) {
                since = since < 0 ? minute : since;
                left--;
            } else if (since >= 0) {
                spans.add(new Span(since, minute));
                since = -1;
            }
        }
        return spans;
    }

    private static boolean pause(List<Span> breaks, int minute) {
        return breaks.stream()
                .anyMatch(one -> one.fromMinute() <= minute && minute < one.toMinute());
    }
}
