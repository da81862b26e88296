package org.ripewood.standing;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Reason;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepEntity;
import org.ripewood.steps.StepHistories;
import org.ripewood.steps.StepState;
import org.ripewood.steps.StepWriter;
import org.ripewood.steps.WaiverBook;
import org.ripewood.steps.WaiverEntity;
import org.ripewood.trees.CourseTrees;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

/** Assigns steps, and keeps what each stood on. */
@ApplicationScoped
@Transactional
public class Assigner {

    private final Trees trees;
    private final CourseTrees courseTrees;
    private final SubjectGatherer gatherer;
    private final TreesTogether many;
    private final StepHistories histories;
    private final StepWriter writer;
    private final WaiverBook waivers;
    private final DecisionBook decisions;
    private final Today today;
    private final TreeDays treeDays;

    Assigner(
            Trees trees,
            CourseTrees courseTrees,
            SubjectGatherer gatherer,
            TreesTogether many,
            StepHistories histories,
            StepWriter writer,
            WaiverBook waivers,
            DecisionBook decisions,
            Today today,
            TreeDays treeDays) {
        this.trees = trees;
        this.courseTrees = courseTrees;
        this.gatherer = gatherer;
        this.many = many;
        this.histories = histories;
        this.writer = writer;
        this.waivers = waivers;
        this.decisions = decisions;
        this.today = today;
        this.treeDays = treeDays;
    }

    /**
     * Assigns a step; instructors who reach the tree only. Every reason against it must be waivable
     * and waived with a reason.
     */
    public Step assign(Actor actor, long treeId, NewAssignment assignment) {
        trees.requireHere(actor, treeId);
        var tree = gatherer.one(actor, treeId, treeDays.at(treeId));
        actor.require(Role.INSTRUCTOR, "assign a step");
        return writer.told(keep(actor, tree, AssignmentCheck.of(tree, assignment), assignment));
    }

    /**
     * Assigns one step to many trees of a course, each in its own right, all or none; instructors
     * of the course only. 400 names every tree that cannot be given it, with the reason.
     */
    public List<Step> assignAll(Actor actor, long courseId, NewAssignments wanted) {
        actor.require(Role.INSTRUCTOR, "assign a step");
        var ids = wanted.trees().stream().map(NewAssignments.OfTree::treeId).toList();
        var days = many.of(courseTrees.chosen(actor, courseId, ids, "trees[%d].treeId"));
        var checked = new ArrayList<AssignmentCheck.Passed>();
        var faults = new ArrayList<Fault>();
        for (int i = 0; i < ids.size(); i++) {
            var tree = requireNonNull(days.get(ids.get(i)));
            try {
                checked.add(AssignmentCheck.of(tree, wanted.of(wanted.trees().get(i))));
            } catch (Refused refused) {
                faults.addAll(AssignmentCheck.ofTree(i, tree, refused.problem()));
            }
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        var steps = new ArrayList<StepBrief>();
        for (int i = 0; i < ids.size(); i++) {
            var tree = requireNonNull(days.get(ids.get(i)));
            var assignment = wanted.of(wanted.trees().get(i));
            steps.add(writer.brief(keep(actor, tree, checked.get(i), assignment)));
        }
        return histories.told(steps);
    }

    /** Notes that a technique was already done; instructors only. */
    public Step noteFoundDone(
            Actor actor, long treeId, String technique, LocalDate doneOn, @Nullable String note) {
        trees.requireHere(actor, treeId);
        var tree = gatherer.one(actor, treeId, treeDays.at(treeId));
        actor.require(Role.INSTRUCTOR, "note that a step was found done");
        var standing = AssignmentCheck.standing(tree, technique);
        if (standing.reasons().stream().anyMatch(Reason.OfSpecies.class::isInstance)) {
            throw Refused.conflict(
                    "“%s” is not a technique for this species."
                            .formatted(tree.tell(standing).title()),
                    null);
        }
        var last = treeDays.last(treeId);
        if (doneOn.isAfter(last) || doneOn.getYear() < SubjectGatherer.FIRST_YEAR) {
            throw Refused.invalid(
                    "doneOn",
                    "Expected a day from %d up to today, %s; found %s."
                            .formatted(SubjectGatherer.FIRST_YEAR, last, doneOn));
        }
        AssignmentCheck.refuseSecond(tree, technique);
        var step = step(actor, tree, technique);
        step.doneOn = doneOn;
        step.note = StepWriter.noteOf(note);
        writer.begin(actor, step, StepState.FOUND_DONE);
        return writer.told(step);
    }

    private StepEntity keep(
            Actor actor, TreeOnDay tree, AssignmentCheck.Passed passed, NewAssignment assignment) {
        var step = step(actor, tree, assignment.technique());
        step.fromDay = assignment.from();
        step.untilDay = assignment.until();
        step.note = StepWriter.noteOf(assignment.note());
        step.decisionId =
                decisions.keep(
                        actor,
                        tree.tree().id(),
                        tree.on(),
                        tree.content().revision(),
                        passed.told(),
                        today.now());
        writer.begin(actor, step, StepState.ASSIGNED);
        passed.waivers().forEach((key, why) -> waivers.persist(waiver(actor, step, key, why)));
        return step;
    }

    private static StepEntity step(Actor actor, TreeOnDay tree, String technique) {
        var step = new StepEntity();
        step.treeId = tree.tree().id();
        step.technique = technique;
        step.assignedById = actor.personId();
        step.assignedOn = tree.on();
        return step;
    }

    private WaiverEntity waiver(Actor actor, StepEntity step, String key, String why) {
        var waiver = new WaiverEntity();
        waiver.stepId = step.id();
        waiver.reasonKey = key;
        waiver.why = why;
        waiver.byId = actor.personId();
        waiver.waivedOn = step.assignedOn;
        return waiver;
    }
}
