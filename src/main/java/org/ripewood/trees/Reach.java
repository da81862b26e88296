package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Source;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** Who reaches which tree, and what their word weighs there. */
@ApplicationScoped
public class Reach {

    private final People people;
    private final TreeRows trees;

    Reach(People people, TreeRows trees) {
        this.people = people;
        this.trees = trees;
    }

    /** A tree within reach; one out of reach is told like one that is not there. */
    TreeEntity tree(Actor actor, long treeId) {
        var tree = trees.findById(treeId);
        if (tree == null || !people.reaches(actor, tree.keeperId)) {
            throw Refused.notFound("tree", treeId);
        }
        return tree;
    }

    /** The same with its former keepers, read in one query. */
    KnownTree known(Actor actor, long treeId) {
        var found = trees.withFormerKeepers(treeId);
        if (found.isEmpty()) {
            throw Refused.notFound("tree", treeId);
        }
        var tree = (TreeEntity) found.get(0)[0];
        if (!people.reaches(actor, tree.keeperId)) {
            throw Refused.notFound("tree", treeId);
        }
        var former =
                found.stream()
                        .map(row -> (Long) row[1])
                        .filter(Objects::nonNull)
                        .collect(Collectors.toSet());
        return new KnownTree(tree, former);
    }

    /** A tree within reach, and everybody who kept it before. */
    record KnownTree(TreeEntity tree, Set<Long> former) {}

    /** The same as a question. */
    public boolean includes(Actor actor, long treeId) {
        var tree = trees.findById(treeId);
        return tree != null && people.reaches(actor, tree.keeperId);
    }

    /**
     * Goes on only when the tree is within reach and at the school; 409 when it left: then its
     * record is closed and may only be read.
     */
    public void requireHere(Actor actor, long treeId) {
        var tree = tree(actor, treeId);
        if (tree.leftOn != null) {
            throw Refused.conflict(
                    "The tree left the school on %s.".formatted(tree.leftOn),
                    "Maybe it came back: then hand it over to whoever keeps it now.");
        }
    }

    /** Goes on only when the tree is within reach. */
    public void require(Actor actor, long treeId) {
        tree(actor, treeId);
    }

    /** What somebody who reaches the tree counts as: an instructor's eye, or a student's. */
    public static Source sourceOf(Actor actor) {
        return actor.is(Role.INSTRUCTOR) ? Source.INSTRUCTOR : Source.STUDENT;
    }
}
