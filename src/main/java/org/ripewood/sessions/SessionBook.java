package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The class dates kept. */
@ApplicationScoped
class SessionBook implements PanacheRepositoryBase<SessionEntity, Long> {

    private static final int MOST_LISTED = 100;
    private static final int MOST_OF_PERSON = 500;

    /** No course has this id; a list in a query must not be empty. */
    private static final Collection<Long> NO_COURSE = List.of(-1L);

    List<SessionEntity> ofCourses(Collection<Long> courseIds, LocalDate from) {
        return courseIds.isEmpty()
                ? List.of()
                : find(
                                "courseId in ?1 and heldOn >= ?2 order by heldOn, startsAt, id",
                                courseIds,
                                from)
                        .range(0, MOST_LISTED - 1)
                        .list();
    }

    /** Sessions of these courses and those a person teaches, whatever their course. */
    List<SessionEntity> ofPerson(long personId, Collection<Long> courseIds, LocalDate from) {
        var among = courseIds.isEmpty() ? NO_COURSE : courseIds;
        return find(
                        "heldOn >= ?1 and (courseId in ?2 or ?3 member of instructorIds)"
                                + " order by heldOn, startsAt, id",
                        from,
                        among,
                        personId)
                .range(0, MOST_OF_PERSON - 1)
                .list();
    }

    /** Those with these ids, soonest first. */
    List<SessionEntity> byIds(Collection<Long> ids) {
        return ids.isEmpty() ? List.of() : list("id in ?1 order by heldOn, startsAt, id", ids);
    }

    /** Sessions of these days, of whatever course. */
    List<SessionEntity> on(Collection<LocalDate> days) {
        return days.isEmpty()
                ? List.of()
                : list("heldOn in ?1 order by heldOn, startsAt, id", days);
    }

    /** The latest session of a course that is not called off; null for none. */
    @Nullable SessionEntity latest(long courseId) {
        return find("courseId = ?1 and cancelledAt is null order by heldOn desc, id desc", courseId)
                .firstResult();
    }

    /** Sessions of a day, of whatever course. */
    List<SessionEntity> on(LocalDate day) {
        return list("heldOn = ?1 order by startsAt, id", day);
    }
}
