package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.People;
import org.ripewood.platform.Actor;

/**
 * Whoever kept a tree before. What they saw and did stays with the tree; who they are and what they
 * wrote in their own words stays with them, and is shown to those only who reach them anyway.
 */
@ApplicationScoped
public class FormerKeepers {

    /** What stands in place of a former keeper's name. */
    public static final String NAME = "a former keeper";

    private final TreeRows trees;
    private final TreeKeepingRows keepings;
    private final People people;

    FormerKeepers(TreeRows trees, TreeKeepingRows keepings, People people) {
        this.trees = trees;
        this.keepings = keepings;
        this.people = people;
    }

    /** Former keepers of a tree whom the actor does not reach. */
    public Set<Long> hidden(Actor actor, TreeEntity tree) {
        return of(List.of(tree)).getOrDefault(tree.id, Set.of()).stream()
                .filter(keeper -> !people.reaches(actor, keeper))
                .collect(Collectors.toSet());
    }

    /** The same of many trees; those of which nobody is hidden may be absent. */
    public Map<Long, Set<Long>> hidden(Actor actor, Collection<TreeEntity> trees) {
        var former = of(trees);
        if (former.isEmpty()) {
            return former;
        }
        var reached = people.reachable(actor);
        if (reached == null) {
            return Map.of();
        }
        former.values().forEach(keepers -> keepers.removeAll(reached));
        return former;
    }

    /** Former keepers by tree, in one query; trees that had one keeper only are absent. */
    public Map<Long, Set<Long>> of(Collection<TreeEntity> trees) {
        var now = trees.stream().collect(Collectors.toMap(tree -> tree.id, tree -> tree.keeperId));
        var former = new HashMap<Long, Set<Long>>();
        for (var keeping : keepings.ofTrees(now.keySet())) {
            if (!Objects.equals(now.get(keeping.treeId), keeping.keeperId)) {
                former.computeIfAbsent(keeping.treeId, none -> new HashSet<>())
                        .add(keeping.keeperId);
            }
        }
        return former;
    }

    public Map<Long, Set<Long>> ofIds(Collection<Long> treeIds) {
        return treeIds.isEmpty() ? Map.of() : of(trees.list("id in ?1", Set.copyOf(treeIds)));
    }

    /** Names by id, the hidden ones told as a former keeper. */
    public Map<Long, String> names(Set<Long> hidden, Collection<Long> personIds) {
        var names = new HashMap<>(people.names(personIds));
        names.keySet().stream()
                .filter(hidden::contains)
                .toList()
                .forEach(keeper -> names.put(keeper, NAME));
        return names;
    }

    /** Words of a hidden person are left out. */
    public static @Nullable String words(Set<Long> hidden, long byId, @Nullable String words) {
        return hidden.contains(byId) ? null : words;
    }
}
