package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.condition.Closing;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TreeLook;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.PictureFormat;
import org.ripewood.web.kit.Said;
import org.ripewood.web.kit.StepLine;

/** Lays out what the page of a tree's record shows. */
@ApplicationScoped
class TreeRecordAssembler {

    private final Standings standings;
    private final Trees trees;
    private final Said said;

    TreeRecordAssembler(Standings standings, Trees trees, Said said) {
        this.standings = standings;
        this.trees = trees;
        this.said = said;
    }

    TreeRecordModel lay(Actor actor, long treeId, FormState typed) {
        var look = standings.lookToday(actor, treeId);
        said.now(look.day());
        var tree = look.tree();
        var inForce = look.day().content();
        var growth = look.growth();
        var closings = growth.closings();
        var wounds = closings.stream().map(Closing::wound).toList();
        var branches = look.branches();
        var trunk = growth.trunk();
        return new TreeRecordModel(
                tree,
                look.on(),
                actor.is(Role.INSTRUCTOR),
                StepLines.of(look, step -> !step.state().isOpen()),
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
                typed);
    }

    /** Who entered work that nobody signed off is named as on the rest of the record. */
    private List<TreeRecordModel.WorkLine> works(Actor actor, TreeLook look) {
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
                                new TreeRecordModel.WorkLine(
                                        work.work(),
                                        StepLine.title(techniques, work.work().work().technique()),
                                        work.signedOff() ? null : names.get(work.work().byId())))
                .toList();
    }
}
