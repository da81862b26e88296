package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The enrolments kept, bench by bench. */
@ApplicationScoped
class EnrolmentBook implements PanacheRepositoryBase<EnrolmentEntity, Long> {

    List<EnrolmentEntity> of(Collection<Long> sessionIds) {
        return sessionIds.isEmpty()
                ? List.of()
                : list("sessionId in ?1 order by id", sessionIds).stream()
                        .sorted(
                                Comparator.comparing(
                                        enrolment -> enrolment.bench, BenchOrder.AS_COUNTED))
                        .toList();
    }
}
