package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.steps.Step;
import org.ripewood.steps.StepEntity;
import org.ripewood.steps.StepState;
import org.ripewood.steps.StepWriter;
import org.ripewood.steps.WaiverBook;
import org.ripewood.steps.WaiverEntity;
import org.ripewood.trees.TreeDays;
import org.ripewood.trees.Trees;

/** Assigns steps, and keeps what each stood on. */
@ApplicationScoped
@Transactional
public class Assigner {

    private final Trees trees;
    private final SubjectGatherer gatherer;
    private final StepWriter writer;
    private final WaiverBook waivers;
    private final DecisionBook decisions;
    private final Today today;
    private final TreeDays treeDays;

    Assigner(
            Trees trees,
            SubjectGatherer gatherer,
            StepWriter writer,
            WaiverBook waivers,
            DecisionBook decisions,
            Today today,
            TreeDays treeDays) {
        this.trees = trees;
        this.gatherer = gatherer;
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
        var standing = standing(tree, assignment.technique());
        requireDays(assignment, tree.on());
        refuseSecond(tree, assignment.technique());
        var told = tree.tell(standing);
        refuseSettled(told);
        var opensInTime = seasonWillBeOpen(tree, standing, assignment.from());
        var passed = new WaiverCheck(told, opensInTime).check(assignment.waivers());
        return keep(actor, tree, told, assignment, passed);
    }

    /** Notes that a technique was already done; instructors only. */
    public Step noteFoundDone(
            Actor actor, long treeId, String technique, LocalDate doneOn, @Nullable String note) {
        trees.requireHere(actor, treeId);
        var tree = gatherer.one(actor, treeId, treeDays.at(treeId));
        actor.require(Role.INSTRUCTOR, "note that a step was found done");
        var standing = standing(tree, technique);
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
        refuseSecond(tree, technique);
        var step = step(actor, treeId, technique);
        step.doneOn = doneOn;
        step.note = StepWriter.noteOf(note);
        writer.begin(actor, step, StepState.FOUND_DONE);
        return writer.told(step);
    }

    private Step keep(
            Actor actor,
            TreeOnDay tree,
            TechniqueStanding told,
            NewAssignment assignment,
            Map<String, String> passed) {
        var step = step(actor, tree.tree().id(), assignment.technique());
        step.fromDay = assignment.from();
        step.untilDay = assignment.until();
        step.note = StepWriter.noteOf(assignment.note());
        step.decisionId =
                decisions.keep(
                        actor,
                        tree.tree().id(),
                        tree.on(),
                        tree.content().revision(),
                        told,
                        today.now());
        writer.begin(actor, step, StepState.ASSIGNED);
        passed.forEach((key, why) -> waivers.persist(waiver(actor, step, key, why)));
        return writer.told(step);
    }

    private StepEntity step(Actor actor, long treeId, String technique) {
        var step = new StepEntity();
        step.treeId = treeId;
        step.technique = technique;
        step.assignedById = actor.personId();
        step.assignedOn = treeDays.at(treeId);
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

    private static Standing standing(TreeOnDay tree, String technique) {
        return tree.find(technique)
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        "technique",
                                        "There is no technique “%s”.".formatted(technique)
                                                + Suggestion.maybe(
                                                        tree.content().techniques().keySet(),
                                                        technique)));
    }

    private static void requireDays(NewAssignment assignment, LocalDate now) {
        var faults = new ArrayList<Fault>();
        var from = assignment.from();
        var until = assignment.until();
        var last = now.plusYears(SubjectGatherer.YEARS_AHEAD);
        if (from != null && (from.isAfter(last) || from.getYear() < SubjectGatherer.FIRST_YEAR)) {
            faults.add(
                    new Fault("from", "Expected a day up to %s; found %s.".formatted(last, from)));
        }
        if (until != null && (until.isBefore(now) || until.isAfter(last))) {
            faults.add(
                    new Fault(
                            "until",
                            "Expected a day from today, %s, to %s; found %s."
                                    .formatted(now, last, until)));
        }
        if (from != null && until != null && from.isAfter(until)) {
            faults.add(
                    new Fault(
                            "until",
                            "Expected a day on or after the first, %s; found %s."
                                    .formatted(from, until)));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    private static void refuseSecond(TreeOnDay tree, String technique) {
        var open = tree.open().get(technique);
        if (open != null) {
            throw Refused.conflict(
                    "Step %d for “%s” is still open on this tree; it is %s."
                            .formatted(
                                    open.id(),
                                    tree.content().technique(technique).title(),
                                    open.state().words()),
                    "Maybe withdraw it first.");
        }
    }

    private static void refuseSettled(TechniqueStanding told) {
        if (told.verdict() == Verdict.DONE || told.verdict() == Verdict.NOT_NEEDED) {
            var because =
                    told.reasons().stream()
                            .map(ReasonView::sentence)
                            .collect(Collectors.joining(" "));
            throw Refused.conflict(
                    "“%s” is %s for this tree. %s"
                            .formatted(
                                    told.title(),
                                    told.verdict() == Verdict.DONE ? "done" : "not needed",
                                    because),
                    null);
        }
    }

    /**
     * Whether the season is open when the step begins. When flowers decide, nobody can know today;
     * then the day the leaves open it is good enough.
     */
    private static boolean seasonWillBeOpen(
            TreeOnDay tree, Standing standing, @Nullable LocalDate from) {
        if (from == null || !from.isAfter(tree.on())) {
            return false;
        }
        var then =
                TreeOnDay.seasonOf(
                        tree.content()
                                .rulebook()
                                .standing(tree.subject(), standing.technique(), from));
        var now = TreeOnDay.seasonOf(standing);
        var opensOn = now == null ? null : now.opensOn();
        return then != null
                && (then.truth() == Truth.YES
                        || (then.truth() == Truth.UNKNOWN
                                && opensOn != null
                                && !from.isBefore(opensOn)));
    }
}
