package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;

/** The class dates kept. */
@ApplicationScoped
class SessionBook implements PanacheRepositoryBase<SessionEntity, Long> {

    private static final int MOST_LISTED = 100;

    List<SessionEntity> ofCourse(long courseId, LocalDate from) {
        return find("courseId = ?1 and heldOn >= ?2 order by heldOn, startsAt, id", courseId, from)
                .range(0, MOST_LISTED - 1)
                .list();
    }

    /** Sessions of a day, of whatever course. */
    List<SessionEntity> on(LocalDate day) {
        return list("heldOn = ?1 order by startsAt, id", day);
    }
}
