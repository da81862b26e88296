package org.ripewood.web.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import org.ripewood.asks.Asks;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;

/** Lays out what was asked of a tree. */
@ApplicationScoped
class AskPageAssembler {

    private final Trees trees;
    private final Asks asks;

    AskPageAssembler(Trees trees, Asks asks) {
        this.trees = trees;
        this.asks = asks;
    }

    AskPageModel lay(Actor actor, long treeId, FormState typed) {
        var tree = trees.get(actor, treeId);
        var found = asks.of(actor, treeId);
        var persons = new HashSet<Long>();
        for (var ask : found) {
            persons.add(ask.byId());
            if (ask.answer() != null) {
                persons.add(ask.answer().byId());
            }
        }
        return new AskPageModel(
                tree,
                found,
                trees.names(actor, treeId, persons),
                actor.is(Role.INSTRUCTOR) && !tree.left(),
                tree.keeperId() == actor.personId() && !tree.left(),
                typed);
    }
}
