package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
class DepartureRows implements PanacheRepositoryBase<DepartureEntity, Long> {

    List<DepartureEntity> ofTree(long treeId) {
        return list("treeId = ?1 order by id desc", treeId);
    }
}
