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
import org.ripewood.people.People;
import org.ripewood.platform.Actor;

/**
 * Whoever kept a tree before. What they saw and did stays with the tree; who they are and what they
 * wrote in their own words stays with them, and is shown to those only who reach them anyway.
 */
@ApplicationScoped
public class FormerKeepers {

    /** What stands in place of a former keeper's name. */
    public static final String NAME = "a former keeper";

    private final TreeKeepingRows keepings;
    private final People people;

    FormerKeepers(TreeKeepingRows keepings, People people) {
        this.keepings = keepings;
        this.people = people;
    }

    /** Former keepers of a tree. */
    Set<Long> of(TreeEntity tree) {
        return of(List.of(tree)).getOrDefault(tree.id, Set.of());
    }

    /** Former keepers of a tree whom the actor does not reach. */
    Set<Long> hidden(Actor actor, TreeEntity tree) {
        return hidden(actor, of(tree));
    }

    /** Those of these former keepers whom the actor does not reach. */
    Set<Long> hidden(Actor actor, Set<Long> former) {
        var reached = former.isEmpty() ? null : people.reachable(actor);
        if (reached == null) {
            return Set.of();
        }
        var hidden = new HashSet<>(former);
        reached.forEach(hidden::remove);
        return hidden;
    }

    /** The same of many trees; those of which nobody is hidden may be absent. */
    Map<Long, Set<Long>> hidden(Actor actor, Collection<TreeEntity> trees) {
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

    private Map<Long, Set<Long>> of(Collection<TreeEntity> trees) {
        return of(trees.stream().collect(Collectors.toMap(tree -> tree.id, tree -> tree.keeperId)));
    }

    /** Former keepers by tree, in one query; trees that had one keeper only are absent. */
    public Map<Long, Set<Long>> ofTrees(Collection<Tree> trees) {
        return of(trees.stream().collect(Collectors.toMap(Tree::id, Tree::keeperId)));
    }

    private Map<Long, Set<Long>> of(Map<Long, Long> now) {
        var former = new HashMap<Long, Set<Long>>();
        for (var keeping : keepings.ofTrees(now.keySet())) {
            if (!Objects.equals(now.get(keeping.treeId), keeping.keeperId)) {
                former.computeIfAbsent(keeping.treeId, none -> new HashSet<>())
                        .add(keeping.keeperId);
            }
        }
        return former;
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
