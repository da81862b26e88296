package org.ripewood.news;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hibernate.Session;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.NewsDescription;
import org.ripewood.platform.records.NewsDescriptions;

/**
 * Visits as they are kept, read together with what happened since, in one statement: this page is
 * asked for more than any other. What happened the rooms describe; here stands to whom it is told.
 */
@ApplicationScoped
class VisitRows {

    /** No session has this number. */
    private static final long NO_SESSION = -1;

    private static final String STUDENTS_OF_MINE =
            """
            select m.person_id from membership m
            join membership mine on mine.course_id = m.course_id
            where mine.person_id = :person and mine.role = 'INSTRUCTOR' and mine.left_on is null
            and m.role = 'STUDENT' and m.left_on is null""";

    private static final String COURSES_OF_MINE =
            """
            select mine.course_id from membership mine
            where mine.person_id = :person and mine.left_on is null""";

    private final Session session;
    private final String sql;

    VisitRows(Session session, Instance<NewsDescriptions> rooms) {
        this.session = session;
        this.sql = sql(rooms);
    }

    /**
     * A visit and what happened since the one before it.
     *
     * @param visit null when there was none yet
     * @param signedIn when the session began; null for none
     * @param rows the latest first
     */
    record Read(@Nullable Visit visit, @Nullable Instant signedIn, List<NewsRow> rows) {}

    private static String sql(Instance<NewsDescriptions> rooms) {
        var happened =
                rooms.stream()
                        .flatMap(room -> room.news().stream())
                        .map(NewsDescription::sql)
                        .collect(Collectors.joining(" union all "));
        return """
                select v.since as since, v.moved_at as began, s.signed_in_at as signed_in,
                n.happened as happened, n.what as what, n.name as name, n.tree_id as tree_id,
                n.label as label, n.course as course, n.thing_id as thing_id, n.code as code
                from person_visit v
                left join sign_in_session s on s.id = :session and s.person_id = v.person_id
                left join (select h.happened, h.what, p.name, h.tree_id, t.label,
                c.name as course, h.thing_id, h.code
                from (%s) h join person p on p.id = h.by_id
                left join tree t on t.id = h.tree_id left join course c on c.id = h.course_id
                where h.by_id <> :person and (
                (h.whom = 'KEEPER' and t.keeper_id = :person and t.left_on is null)
                or (h.whom = 'TEACHER' and t.keeper_id <> :person and t.left_on is null
                and t.keeper_id in (%s))
                or (h.whom = 'MEMBER' and h.course_id in (%s))
                or (h.whom = 'STAFF' and h.course_id in (%s and mine.role = 'INSTRUCTOR'))
                )) n on n.happened >= v.since
                where v.person_id = :person
                order by n.happened desc, n.thing_id desc"""
                .formatted(happened, STUDENTS_OF_MINE, COURSES_OF_MINE, COURSES_OF_MINE);
    }

    /**
     * @param floor what is older is not told
     * @param most so many rows at most
     */
    Read read(long personId, @Nullable Long signInSession, Instant floor, int most) {
        var found =
                session.createNativeQuery(sql, Object[].class)
                        .addScalar("since", Instant.class)
                        .addScalar("began", Instant.class)
                        .addScalar("signed_in", Instant.class)
                        .addScalar("happened", Instant.class)
                        .addScalar("what", String.class)
                        .addScalar("name", String.class)
                        .addScalar("tree_id", Long.class)
                        .addScalar("label", String.class)
                        .addScalar("course", String.class)
                        .addScalar("thing_id", Long.class)
                        .addScalar("code", String.class)
                        .setParameter("person", personId)
                        .setParameter("session", signInSession == null ? NO_SESSION : signInSession)
                        .setParameter("floor", floor)
                        .setMaxResults(most)
                        .getResultList();
        if (found.isEmpty()) {
            return new Read(null, null, List.of());
        }
        var first = found.get(0);
        var rows = new ArrayList<NewsRow>();
        for (var row : found) {
            if (row[3] != null) {
                rows.add(
                        new NewsRow(
                                (Instant) row[3],
                                (String) row[4],
                                (String) row[5],
                                (Long) row[6],
                                (String) row[7],
                                (String) row[8],
                                (Long) row[9],
                                (String) row[10]));
            }
        }
        return new Read(
                new Visit((Instant) first[0], (Instant) first[1]), (Instant) first[2], rows);
    }

    /** Of two first visits at once the quicker stays. */
    void begin(long personId, Visit visit) {
        session.createNativeMutationQuery(
                        "insert into person_visit (person_id, since, moved_at) values (:person,"
                                + " :since, :began) on conflict do nothing")
                .setParameter("person", personId)
                .setParameter("since", visit.since())
                .setParameter("began", visit.began())
                .executeUpdate();
    }

    /** The next visit; nothing when another request was quicker. */
    void moveOn(long personId, Visit next) {
        session.createNativeMutationQuery(
                        "update person_visit set since = :since, moved_at = :began"
                                + " where person_id = :person and moved_at = :since")
                .setParameter("person", personId)
                .setParameter("since", next.since())
                .setParameter("began", next.began())
                .executeUpdate();
    }
}
