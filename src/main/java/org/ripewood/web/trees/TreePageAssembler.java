package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.condition.Closing;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TreeLook;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;
import org.ripewood.web.kit.StepLine;

/** Lays out what the page of a tree shows. */
@ApplicationScoped
class TreePageAssembler {

    private static final int MOST_STEPS = 100;

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

    TreePageModel lay(Actor actor, long treeId, FormState typed) {
        var look = standings.look(actor, treeId, treeDays.at(treeId));
        var tree = look.tree();
        var inForce = look.day().content();
        var standing = look.standing();
        var steps = steps(look);
        var growth = look.growth();
        var closings = growth.closings();
        var wounds = closings.stream().map(Closing::wound).toList();
        var branches = look.branches();
        var trunk = growth.trunk();
        return new TreePageModel(
                tree,
                inForce.kindOf(tree.species()),
                look.keeper().name(),
                look.day().state().site().name(),
                actor.is(Role.INSTRUCTOR),
                aftercare.of(look.day().state()),
                steps.stream().filter(line -> line.step().state().isOpen()).toList(),
                steps.stream().filter(line -> !line.step().state().isOpen()).toList(),
                look.proposals(standing),
                look.careNow(),
                inForce.stages(),
                standing,
                VerdictGroup.of(standing),
                FactLines.known(inForce, look.day().state().facts()),
                FactLines.recordable(inForce),
                closings,
                trunk,
                PictureFormat.of(sheet -> TreeDrawings.trunk(tree, trunk, wounds, branches, sheet)),
                branches,
                look.containers(),
                works(actor, look),
                inForce.techniques().values().stream()
                        .sorted(Comparator.comparing(Technique::title))
                        .toList(),
                departures(actor, tree),
                earlier(look.reached()),
                typed);
    }

    /** A tree that was never changed has never left either. */
    private List<Departure> departures(Actor actor, Tree tree) {
        return tree.version() == 0 ? List.of() : departures.of(actor, tree.id());
    }

    private static List<StepLine> steps(TreeLook look) {
        var techniques = look.day().content().techniques();
        return look.steps().stream()
                .limit(MOST_STEPS)
                .map(step -> new StepLine(step, StepLine.title(techniques, step.technique())))
                .toList();
    }

    /** Who entered work that nobody signed off is named as on the rest of the record. */
    private List<TreePageModel.WorkLine> works(Actor actor, TreeLook look) {
        var techniques = look.day().content().techniques();
        var told = look.worksTold();
        var entered =
                told.stream()
                        .filter(work -> !work.signedOff())
                        .map(work -> work.work().byId())
                        .collect(Collectors.toSet());
        var names =
                entered.isEmpty()
                        ? Map.<Long, String>of()
                        : trees.names(actor, look.tree().id(), entered);
        return told.stream()
                .map(
                        work ->
                                new TreePageModel.WorkLine(
                                        work.work(),
                                        StepLine.title(techniques, work.work().work().technique()),
                                        work.signedOff() ? null : names.get(work.work().byId())))
                .toList();
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
