package org.ripewood.standing;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;

/** The reports kept, oldest first. */
@ApplicationScoped
class ReportBook implements PanacheRepositoryBase<ReportEntity, Long> {

    List<ReportEntity> of(Collection<Long> stepIds) {
        return stepIds.isEmpty() ? List.of() : list("stepId in ?1 order by id", stepIds);
    }
}
