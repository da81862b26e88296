package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.Standings;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

/** Lays out what the page of a tree shows. */
@ApplicationScoped
class TreePageAssembler {

    private final Standings standings;
    private final Trees trees;
    private final Departures departures;
    private final Aftercare aftercare;
    private final TreeDays treeDays;

    TreePageAssembler(
            Standings standings,
            Trees trees,
            Departures departures,
            Aftercare aftercare,
            TreeDays treeDays) {
        this.standings = standings;
        this.trees = trees;
        this.departures = departures;
        this.aftercare = aftercare;
        this.treeDays = treeDays;
    }

    TreePageModel lay(Actor actor, long treeId) {
        var look = standings.look(actor, treeId, treeDays.at(treeId));
        var tree = look.tree();
        var standing = look.standing();
        return new TreePageModel(
                tree,
                look.day().content().kindOf(tree.species()),
                look.keeper().name(),
                look.day().state().site().name(),
                actor.is(Role.INSTRUCTOR),
                aftercare.of(look.day().state()),
                StepLines.of(look, step -> step.state().isOpen()),
                look.proposals(standing),
                look.careNow(),
                standing,
                departures(actor, tree),
                earlier(look.reached()));
    }

    /** A tree that was never changed has never left either. */
    private List<Departure> departures(Actor actor, Tree tree) {
        return tree.version() == 0 ? List.of() : departures.of(actor, tree.id());
    }

    private List<TreePageModel.EarlierLine> earlier(ReachedTree reached) {
        if (reached.earlier().isEmpty()) {
            return List.of();
        }
        var names = trees.names(reached, idsOf(reached.earlier()));
        return reached.earlier().stream()
                .map(
                        said ->
                                new TreePageModel.EarlierLine(
                                        said, names.getOrDefault(said.byId(), "")))
                .toList();
    }

    private static Set<Long> idsOf(List<EarlierWords> earlier) {
        return earlier.stream().map(EarlierWords::byId).collect(Collectors.toSet());
    }
}
