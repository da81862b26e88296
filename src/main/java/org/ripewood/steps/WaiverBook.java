package org.ripewood.steps;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;

/** The waivers kept, oldest first. */
@ApplicationScoped
public class WaiverBook implements PanacheRepositoryBase<WaiverEntity, Long> {

    public List<WaiverEntity> of(Collection<Long> stepIds) {
        return stepIds.isEmpty() ? List.of() : list("stepId in ?1 order by id", stepIds);
    }
}
