package org.ripewood.steps;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;

/** The events kept, oldest first. */
@ApplicationScoped
class EventBook implements PanacheRepositoryBase<EventEntity, Long> {

    List<EventEntity> of(Collection<Long> stepIds) {
        return stepIds.isEmpty() ? List.of() : list("stepId in ?1 order by id", stepIds);
    }
}
