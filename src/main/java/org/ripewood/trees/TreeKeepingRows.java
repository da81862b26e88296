package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;

@ApplicationScoped
class TreeKeepingRows implements PanacheRepositoryBase<TreeKeepingEntity, Long> {

    List<TreeKeepingEntity> ofTrees(Collection<Long> treeIds) {
        return treeIds.isEmpty()
                ? List.of()
                : list("treeId in ?1 order by treeId, since, id", Set.copyOf(treeIds));
    }
}
