package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;

@ApplicationScoped
class TreeWordsRows implements PanacheRepositoryBase<TreeWordsEntity, Long> {

    /** In the order they were said. */
    List<TreeWordsEntity> ofTrees(Collection<Long> treeIds) {
        return treeIds.isEmpty()
                ? List.of()
                : list("treeId in ?1 order by treeId, id", Set.copyOf(treeIds));
    }
}
