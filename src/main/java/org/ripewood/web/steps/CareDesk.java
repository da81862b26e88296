package org.ripewood.web.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.boards.Checklist;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Typed;

/** Lays out what pages show of a tree's care. */
@ApplicationScoped
class CareDesk {

    private final Trees trees;
    private final Aftercare aftercare;
    private final Today today;

    CareDesk(Trees trees, Aftercare aftercare, Today today) {
        this.trees = trees;
        this.aftercare = aftercare;
        this.today = today;
    }

    /**
     * @param list of the tree's checklist; its care after work not yet signed off is shown too
     */
    CareSheet lay(Actor actor, long treeId, List<Checklist.Care> list, Typed typed) {
        var tree = trees.get(actor, treeId);
        var care = aftercare.of(actor, treeId, today.date());
        return new CareSheet(
                tree,
                care,
                actor.is(Role.INSTRUCTOR) || tree.keeperId() == actor.personId(),
                list.stream().filter(one -> !care.tellsOf(treeId, one.afterTitle())).toList(),
                typed);
    }
}
