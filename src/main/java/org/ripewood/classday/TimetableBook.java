package org.ripewood.classday;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** The timetables kept. */
@ApplicationScoped
class TimetableBook implements PanacheRepositoryBase<TimetableEntity, Long> {

    Optional<TimetableEntity> inForce(long sessionId) {
        return find("sessionId = ?1 order by revision desc", sessionId).firstResultOptional();
    }
}
