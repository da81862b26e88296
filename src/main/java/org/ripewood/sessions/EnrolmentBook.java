package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The enrolments kept, bench by bench; those withdrawn stay. */
@ApplicationScoped
class EnrolmentBook implements PanacheRepositoryBase<EnrolmentEntity, Long> {

    /** Who comes. */
    List<EnrolmentEntity> of(Collection<Long> sessionIds) {
        return sessionIds.isEmpty()
                ? List.of()
                : list("sessionId in ?1 and withdrawnAt is null order by id", sessionIds).stream()
                        .sorted(
                                Comparator.comparing(
                                        enrolment -> enrolment.bench, BenchOrder.AS_COUNTED))
                        .toList();
    }

    /** What one person brings, and what they have withdrawn. */
    List<EnrolmentEntity> ofPerson(long personId, Collection<Long> sessionIds) {
        return sessionIds.isEmpty()
                ? List.of()
                : list("personId = ?1 and sessionId in ?2 order by id", personId, sessionIds);
    }
}
