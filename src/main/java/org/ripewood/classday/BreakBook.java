package org.ripewood.classday;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.core.bench.Span;
import org.ripewood.sessions.Session;

/**
 * The breaks kept. Nothing kept means the usual: three quarters of an hour in the middle of a day
 * of five hours or more (common practice, no source).
 */
@ApplicationScoped
class BreakBook implements PanacheRepositoryBase<DayBreakEntity, DayBreakEntity.Place> {

    private static final int LONG_DAY_MINUTES = 300;
    private static final int USUAL_MINUTES = 45;
    private static final int QUARTER = 15;

    List<Span> of(Session session) {
        var kept = list("place.sessionId = ?1 order by place.position", session.id());
        return kept.isEmpty()
                ? usual(Minutes.hours(session))
                : kept.stream()
                        .filter(row -> row.toMinute > row.fromMinute)
                        .map(row -> new Span(row.fromMinute, row.toMinute))
                        .toList();
    }

    private static List<Span> usual(Span hours) {
        if (hours.minutes() < LONG_DAY_MINUTES) {
            return List.of();
        }
        int middle = (hours.fromMinute() + hours.toMinute() - USUAL_MINUTES) / 2;
        int from = middle / QUARTER * QUARTER;
        return List.of(new Span(from, from + USUAL_MINUTES));
    }

    /** Keeps breaks; an empty break says that there is none, not even the usual one. */
    void keep(long sessionId, List<Span> breaks) {
        delete("place.sessionId", sessionId);
        if (breaks.isEmpty()) {
            keep(sessionId, 0, 0, 0);
        }
        for (int i = 0; i < breaks.size(); i++) {
            keep(sessionId, i, breaks.get(i).fromMinute(), breaks.get(i).toMinute());
        }
    }

    private void keep(long sessionId, int position, int fromMinute, int toMinute) {
        var row = new DayBreakEntity();
        row.place = new DayBreakEntity.Place(sessionId, position);
        row.fromMinute = fromMinute;
        row.toMinute = toMinute;
        persist(row);
    }
}
