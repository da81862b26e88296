package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.condition.Closing;
import org.ripewood.condition.TreeStates;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.records.WorksDone;
import org.ripewood.sites.SiteLine;
import org.ripewood.standing.Standings;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Departures;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.TreeSites;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.PictureShown;
import org.ripewood.web.kit.StepLine;
import org.ripewood.web.kit.Typed;

/** Lays out what the page of a tree shows. */
@ApplicationScoped
class TreeDesk {

    private static final Set<StepState> OPEN =
            EnumSet.of(StepState.ASSIGNED, StepState.REPORTED, StepState.SENT_BACK);
    private static final PageRequest STEPS = new PageRequest(0, 100);

    private final People people;
    private final Trees trees;
    private final TreeStates treeStates;
    private final Branches branchesOfSchool;
    private final Containers containersOfSchool;
    private final Departures departuresOfSchool;
    private final WorksDone worksDone;
    private final TreeSites treeSites;
    private final Standings standings;
    private final Steps stepsOfSchool;
    private final Aftercare aftercare;
    private final CourseContent content;
    private final Today today;

    TreeDesk(
            People people,
            Trees trees,
            TreeStates treeStates,
            Branches branchesOfSchool,
            Containers containersOfSchool,
            Departures departuresOfSchool,
            WorksDone worksDone,
            TreeSites treeSites,
            Standings standings,
            Steps stepsOfSchool,
            Aftercare aftercare,
            CourseContent content,
            Today today) {
        this.people = people;
        this.trees = trees;
        this.treeStates = treeStates;
        this.branchesOfSchool = branchesOfSchool;
        this.containersOfSchool = containersOfSchool;
        this.departuresOfSchool = departuresOfSchool;
        this.worksDone = worksDone;
        this.treeSites = treeSites;
        this.standings = standings;
        this.stepsOfSchool = stepsOfSchool;
        this.aftercare = aftercare;
        this.content = content;
        this.today = today;
    }

    TreeSheet lay(Actor actor, long treeId, Typed typed) {
        var on = today.date();
        var tree = trees.get(actor, treeId);
        var inForce = content.inForce();
        var standing = standings.of(actor, treeId, on);
        var steps = steps(actor, treeId);
        var growth = treeStates.growth(actor, treeId, on);
        var closings = growth.closings();
        var wounds = closings.stream().map(Closing::wound).toList();
        var branches = branchesOfSchool.of(actor, treeId);
        var trunk = growth.trunk();
        return new TreeSheet(
                tree,
                inForce.species(tree.species()),
                people.name(tree.keeperId()),
                site(actor, tree.siteId()),
                actor.is(Role.INSTRUCTOR),
                aftercare.of(actor, treeId, on),
                steps.stream().filter(line -> OPEN.contains(line.step().state())).toList(),
                steps.stream().filter(line -> !OPEN.contains(line.step().state())).toList(),
                standings.proposals(actor, treeId, on),
                standing,
                VerdictGroup.of(standing),
                FactLines.known(inForce, treeStates.on(actor, treeId, on).facts()),
                FactLines.recordable(inForce),
                closings,
                trunk,
                PictureShown.of(sheet -> TreeDrawings.trunk(tree, trunk, wounds, branches, sheet)),
                branches,
                containersOfSchool.of(actor, treeId),
                works(actor, treeId),
                departuresOfSchool.of(actor, treeId),
                earlier(actor, treeId),
                typed);
    }

    private List<StepLine> steps(Actor actor, long treeId) {
        var techniques = content.inForce().techniques();
        return stepsOfSchool.of(actor, treeId, STEPS).items().stream()
                .map(step -> new StepLine(step, StepLine.title(techniques, step.technique())))
                .toList();
    }

    private List<TreeSheet.WorkLine> works(Actor actor, long treeId) {
        var techniques = content.inForce().techniques();
        return worksDone.of(actor, treeId).stream()
                .map(
                        done ->
                                new TreeSheet.WorkLine(
                                        done, StepLine.title(techniques, done.work().technique())))
                .toList();
    }

    private List<TreeSheet.EarlierLine> earlier(Actor actor, long treeId) {
        var earlier = trees.earlierWords(actor, treeId);
        if (earlier.isEmpty()) {
            return List.of();
        }
        var names =
                trees.names(
                        actor,
                        treeId,
                        earlier.stream().map(EarlierWords::byId).collect(Collectors.toSet()));
        return earlier.stream()
                .map(said -> new TreeSheet.EarlierLine(said, names.getOrDefault(said.byId(), "")))
                .toList();
    }

    private String site(Actor actor, long siteId) {
        return treeSites.list(actor).stream()
                .filter(site -> site.id() == siteId)
                .map(SiteLine::name)
                .findFirst()
                .orElse("");
    }
}
