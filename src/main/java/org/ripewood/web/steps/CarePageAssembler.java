package org.ripewood.web.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.Care;
import org.ripewood.boards.Checklist;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.TreeLook;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;

/** Lays out what pages show of a tree's care. */
@ApplicationScoped
class CarePageAssembler {

    private final Trees trees;
    private final Aftercare aftercare;
    private final TreeDays treeDays;

    CarePageAssembler(Trees trees, Aftercare aftercare, TreeDays treeDays) {
        this.trees = trees;
        this.aftercare = aftercare;
        this.treeDays = treeDays;
    }

    /**
     * @param list of the tree's checklist; its care after work not yet signed off is shown too
     */
    CarePageModel lay(Actor actor, long treeId, List<Checklist.Care> list, FormState typed) {
        var tree = trees.get(actor, treeId);
        return lay(actor, tree, aftercare.of(actor, treeId, treeDays.at(treeId)), list, typed);
    }

    /** The same of a tree that was just looked at. */
    CarePageModel lay(Actor actor, TreeLook look, List<Checklist.Care> list, FormState typed) {
        return lay(actor, look.tree(), aftercare.of(look.day().state()), list, typed);
    }

    private static CarePageModel lay(
            Actor actor, Tree tree, Care care, List<Checklist.Care> list, FormState typed) {
        return new CarePageModel(
                tree,
                care,
                actor.is(Role.INSTRUCTOR) || tree.keeperId() == actor.personId(),
                list.stream().filter(one -> !care.tellsOf(tree.id(), one.afterTitle())).toList(),
                typed);
    }
}
