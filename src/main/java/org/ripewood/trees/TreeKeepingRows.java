package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
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

    /** The day on which the keeper of now began. */
    LocalDate lastDay(TreeEntity tree) {
        var kept = ofTrees(List.of(tree.id));
        return kept.isEmpty() ? tree.cameOn : kept.get(kept.size() - 1).since;
    }
}
