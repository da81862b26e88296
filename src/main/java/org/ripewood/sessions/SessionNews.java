package org.ripewood.sessions;

import static org.ripewood.platform.records.NewsDescription.NONE;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.platform.records.NewsDescription;
import org.ripewood.platform.records.NewsDescription.Whom;
import org.ripewood.platform.records.NewsDescriptions;

/**
 * Class dates that were moved or called off, for all of the course, and places that were given up,
 * for its instructors. Who gave a place up the audit knows: the first who wrote to the place once
 * it was.
 */
@ApplicationScoped
class SessionNews implements NewsDescriptions {

    @Override
    public List<NewsDescription> news() {
        return List.of(moved(), cancelled(), givenUp());
    }

    /** From what it was before the last move to what it is. */
    private static NewsDescription moved() {
        return new NewsDescription(
                Whom.MEMBER,
                "session_move m join class_session s on s.id = m.session_id",
                "s.cancelled_at is null and m.position = (select max(l.position) from session_move"
                        + " l where l.session_id = s.id)",
                "m.moved_at",
                "'MOVED'",
                "m.moved_by_id",
                NONE,
                "s.course_id",
                "s.id",
                "concat(cast(m.held_on as varchar(10)), '/', cast(s.held_on as varchar(10)))");
    }

    private static NewsDescription cancelled() {
        return new NewsDescription(
                Whom.MEMBER,
                "class_session s",
                "",
                "s.cancelled_at",
                "'CANCELLED'",
                "s.cancelled_by_id",
                NONE,
                "s.course_id",
                "s.id",
                "s.held_on");
    }

    private static NewsDescription givenUp() {
        return new NewsDescription(
                Whom.STAFF,
                """
                enrolment e join class_session s on s.id = e.session_id
                join audit_entry a on a.id = (select min(w.id) from audit_entry w
                join audit_change x on x.entry_id = w.id where x.thing = 'enrolment'
                and x.first_id <= e.id and x.last_id >= e.id
                and w.happened_at >= e.withdrawn_at)""",
                "",
                "e.withdrawn_at",
                "'GIVEN_UP'",
                "a.person_id",
                "e.tree_id",
                "s.course_id",
                "s.id",
                "s.held_on");
    }
}
