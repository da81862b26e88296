package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.condition.TreeStates;
import org.ripewood.core.progress.Fact;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

/** Takes reports of steps done. */
@ApplicationScoped
@Transactional
public class Reports {

    private final StepReach reach;
    private final StepWriter writer;
    private final ReportBook reports;
    private final CourseContent content;
    private final Trees trees;
    private final TreeStates treeStates;
    private final WoundsReported wounds;
    private final Today today;
    private final TreeDays treeDays;

    Reports(
            StepReach reach,
            StepWriter writer,
            ReportBook reports,
            CourseContent content,
            Trees trees,
            TreeStates treeStates,
            WoundsReported wounds,
            Today today,
            TreeDays treeDays) {
        this.reach = reach;
        this.writer = writer;
        this.reports = reports;
        this.content = content;
        this.trees = trees;
        this.treeStates = treeStates;
        this.wounds = wounds;
        this.today = today;
        this.treeDays = treeDays;
    }

    /**
     * The keeper, or an instructor for them, says the step is done; from ASSIGNED or SENT_BACK. 412
     * when the version is not the current one. The same report sent twice counts once.
     */
    public Step report(Actor actor, long stepId, long version, NewReport report) {
        var step = reach.stepToMove(actor, stepId);
        requireKeeperOrInstructor(actor, step);
        var entity = ReportEntity.of(report);
        if (step.state == StepState.REPORTED && saidAlready(step, entity)) {
            return writer.told(step);
        }
        StepWriter.requireVersion(step, version);
        StepTransition.REPORT.next(step.state);
        var inForce = content.inForce();
        var technique = techniqueOf(inForce, step);
        ReportCheck.check(technique, report, step, treeDays.last(step.treeId));
        wounds.check(actor, step.treeId, technique, entity.woundPlace);
        var state = treeStates.on(actor, step.treeId, report.doneOn());
        var traits = inForce.kindOf(state.tree().species()).traits();
        var vigour = state.facts().number(Fact.VIGOUR_INDEX);
        var note = DoseNote.of(technique, traits, state.ledger(), vigour, report.doneOn(), entity);
        return keep(actor, step, entity, note);
    }

    /** The technique of a step, which content may have lost since it was assigned. */
    static Technique techniqueOf(Content content, StepEntity step) {
        var technique = content.techniques().get(step.technique);
        if (technique == null) {
            throw Refused.conflict(
                    "The course content no longer has the technique %s.".formatted(step.technique),
                    "Maybe withdraw the step and assign another.");
        }
        return technique;
    }

    private Step keep(Actor actor, StepEntity step, ReportEntity entity, @Nullable String note) {
        entity.stepId = step.id();
        entity.byId = actor.personId();
        entity.reportedAt = today.now();
        reports.persist(entity);
        step.doneOn = entity.doneOn;
        step.reportedAt = entity.reportedAt;
        writer.move(actor, step, StepTransition.REPORT, note);
        return writer.told(step);
    }

    private boolean saidAlready(StepEntity step, ReportEntity entity) {
        var before = reports.of(List.of(step.id()));
        return !before.isEmpty() && before.get(before.size() - 1).saysTheSameAs(entity);
    }

    private void requireKeeperOrInstructor(Actor actor, StepEntity step) {
        var keeperId = trees.get(actor, step.treeId).keeperId();
        if (actor.personId() != keeperId && !actor.is(Role.INSTRUCTOR)) {
            throw Refused.forbidden("Only the tree's keeper or an instructor may report a step.");
        }
    }
}
