package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
class ObservationRows implements PanacheRepositoryBase<ObservationEntity, Long> {

    /** Trees with a wound read as closed, the latest first. */
    List<Long> treesWithClosedWounds(int most) {
        return getEntityManager()
                .createQuery(
                        "select o.treeId from ObservationEntity o where o.woundId is not null and"
                                + " o.numberValue = 0 and o.supersededBy is null group by o.treeId"
                                + " order by max(o.observedOn) desc",
                        Long.class)
                .setMaxResults(most)
                .getResultList();
    }
}
