package org.ripewood.web.steps;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.Set;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.photos.Photos;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.standing.Decisions;
import org.ripewood.steps.Step;
import org.ripewood.steps.Steps;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.StepLine;

/** Lays out what the page of a step shows. */
@ApplicationScoped
class StepPageAssembler {

    private final People people;
    private final Trees trees;
    private final Steps steps;
    private final Decisions decisions;
    private final Photos photos;
    private final CourseContent content;
    private final StepClashes clashes;
    private final TreeDays treeDays;

    StepPageAssembler(
            People people,
            Trees trees,
            Steps steps,
            Decisions decisions,
            Photos photos,
            CourseContent content,
            StepClashes clashes,
            TreeDays treeDays) {
        this.people = people;
        this.trees = trees;
        this.steps = steps;
        this.decisions = decisions;
        this.photos = photos;
        this.content = content;
        this.clashes = clashes;
        this.treeDays = treeDays;
    }

    /** The tree of a step within reach; 404 out of it. */
    long treeOf(Actor actor, long stepId) {
        return steps.get(actor, stepId).treeId();
    }

    StepPageModel lay(Actor actor, long stepId, FormState sent) {
        var step = steps.get(actor, stepId);
        var typed = clashes.mend(actor, sent, step);
        var tree = trees.get(actor, step.treeId());
        var techniques = content.inForce().techniques();
        var decisionId = step.decisionId();
        return new StepPageModel(
                tree,
                people.name(tree.keeperId()),
                step,
                StepLine.title(techniques, step.technique()),
                techniques.get(step.technique()),
                decisionId == null ? null : decisions.get(actor, decisionId),
                trees.names(actor, step.treeId(), everybody(step)),
                photos.ofStep(actor, stepId),
                actor.is(Role.INSTRUCTOR),
                typed.orFresh(
                        "report",
                        FormState.fresh("report").with("doneOn", treeDays.at(step.treeId()))),
                typed.orFresh("sign-off", FormState.fresh("sign-off")),
                typed.orFresh("send-back", FormState.fresh("send-back")),
                typed.orFresh("withdraw", FormState.fresh("withdraw")),
                typed);
    }

    private static Set<Long> everybody(Step step) {
        var ids = new HashSet<Long>();
        ids.add(step.assignedById());
        step.events().forEach(event -> ids.add(event.byId()));
        step.waivers().forEach(waiver -> ids.add(waiver.byId()));
        var report = step.report();
        if (report != null) {
            ids.add(report.byId());
        }
        return ids;
    }
}
