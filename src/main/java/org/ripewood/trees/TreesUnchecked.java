package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What rooms ask of trees whose reach they have already checked; doors never call it. */
@ApplicationScoped
@Transactional
public class TreesUnchecked {

    private final TreeRows rows;
    private final FormerKeepers formerKeepers;

    TreesUnchecked(TreeRows rows, FormerKeepers formerKeepers) {
        this.rows = rows;
        this.formerKeepers = formerKeepers;
    }

    /** Trees at the school of these keepers, by id of tree, without what is said of them. */
    public List<Tree> ofKeepers(Collection<Long> keeperIds) {
        return keeperIds.isEmpty()
                ? List.of()
                : rows.read(
                        "keeperId in ?1 and " + TreeRows.HERE + " order by id",
                        Set.copyOf(keeperIds));
    }

    /** Trees by id, without what is said of them; ids of no tree are passed over. */
    public List<Tree> byIds(Collection<Long> treeIds) {
        return treeIds.isEmpty() ? List.of() : rows.read("id in ?1", Set.copyOf(treeIds));
    }

    /** Whoever kept these trees before, by tree; trees of one keeper only are absent. */
    public Map<Long, Set<Long>> formerKeepers(Collection<Long> treeIds) {
        return formerKeepers.ofTrees(byIds(treeIds));
    }
}
