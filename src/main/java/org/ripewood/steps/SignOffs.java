package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Technique;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Containers;
import org.ripewood.records.NewContainer;
import org.ripewood.records.Observations;
import org.ripewood.records.WorksDone;
import org.ripewood.trees.Trees;

/** An instructor's look at reported work, and what follows from it for the tree. */
@ApplicationScoped
@Transactional
public class SignOffs {

    private final StepReach reach;
    private final StepWriter writer;
    private final ReportBook reports;
    private final CourseContent content;
    private final Trees trees;
    private final WorksDone worksDone;
    private final Containers containers;
    private final Observations observations;
    private final WoundsReported wounds;

    SignOffs(
            StepReach reach,
            StepWriter writer,
            ReportBook reports,
            CourseContent content,
            Trees trees,
            WorksDone worksDone,
            Containers containers,
            Observations observations,
            WoundsReported wounds) {
        this.reach = reach;
        this.writer = writer;
        this.reports = reports;
        this.content = content;
        this.trees = trees;
        this.worksDone = worksDone;
        this.containers = containers;
        this.observations = observations;
        this.wounds = wounds;
    }

    /**
     * Signs a reported step off: records the work, the wound, the container and the facts it
     * changes. Instructors only, and not on their own trees.
     */
    public Step signOff(Actor actor, long stepId, long version, @Nullable String note) {
        var step = stepOfInstructor(actor, stepId, "sign a step off");
        refuseOwnTree(actor, step);
        StepWriter.requireVersion(step, version);
        StepTransition.SIGN_OFF.next(step.state);
        var kept = StepWriter.noteOf(note);
        var technique = Reports.techniqueOf(content.inForce(), step);
        record(actor, step, technique, latestReport(step));
        writer.move(actor, step, StepTransition.SIGN_OFF, kept);
        return writer.told(step);
    }

    /** Sends a reported step back with a note. Instructors only. */
    public Step sendBack(Actor actor, long stepId, long version, String note) {
        var step = stepOfInstructor(actor, stepId, "send a step back");
        StepWriter.requireVersion(step, version);
        StepTransition.SEND_BACK.next(step.state);
        var kept = StepWriter.requireNote(note, "Say what is to be put right.");
        writer.move(actor, step, StepTransition.SEND_BACK, kept);
        return writer.told(step);
    }

    /** Takes back a step not yet signed off. Instructors only. */
    public Step withdraw(Actor actor, long stepId, long version, String note) {
        var step = stepOfInstructor(actor, stepId, "take a step back");
        StepWriter.requireVersion(step, version);
        StepTransition.WITHDRAW.next(step.state);
        var kept = StepWriter.requireNote(note, "Say why the step is taken back.");
        writer.move(actor, step, StepTransition.WITHDRAW, kept);
        return writer.told(step);
    }

    private StepEntity stepOfInstructor(Actor actor, long stepId, String toDoWhat) {
        var step = reach.stepToMove(actor, stepId);
        actor.require(Role.INSTRUCTOR, toDoWhat);
        return step;
    }

    private void refuseOwnTree(Actor actor, StepEntity step) {
        if (trees.get(actor, step.treeId).keeperId() == actor.personId()) {
            throw Refused.forbidden(
                    "Nobody signs off work on their own tree; another instructor has to look.");
        }
    }

    private ReportEntity latestReport(StepEntity step) {
        var all = reports.of(List.of(step.id()));
        if (all.isEmpty()) {
            throw new IllegalStateException("step " + step.id() + " is reported without a report");
        }
        return all.get(all.size() - 1);
    }

    /**
     * Work, container, wound and changed facts go into the tree's record, dated when it was done.
     */
    private void record(Actor actor, StepEntity step, Technique technique, ReportEntity report) {
        var note = "“%s”, step %d".formatted(technique.title(), step.id());
        worksDone.record(
                actor,
                step.treeId,
                TechniqueWork.of(technique, report.doneOn, report.foliageShare, report.rootShare),
                technique.startsClock(),
                note);
        var container = report.container();
        if (container != null) {
            containers.moveTo(
                    actor,
                    step.treeId,
                    new NewContainer(
                            container.kind(),
                            container.description(),
                            container.litres(),
                            report.doneOn));
        }
        var wound = report.wound();
        if (wound != null) {
            wounds.record(actor, step.treeId, technique, wound, report.doneOn, note);
        }
        var effects = new HashMap<Fact, Value>();
        technique.effects().forEach(effect -> effects.put(effect.fact(), effect.value()));
        if (!effects.isEmpty()) {
            observations.setFacts(actor, step.treeId, effects, report.doneOn, note);
        }
    }
}
