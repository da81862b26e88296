package org.ripewood.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.steps.StepWriter;

/** Whether a step may be assigned to a tree as it stands. Asks nothing and writes nothing. */
final class AssignmentCheck {

    private AssignmentCheck() {}

    /**
     * What was found good.
     *
     * @param told how the technique stands
     * @param waivers those to keep, by key
     */
    record Passed(TechniqueStanding told, Map<String, String> waivers) {}

    /**
     * Goes on only with a step that may be assigned.
     *
     * @throws Refused 400 or 409 with the reason
     */
    static Passed of(TreeOnDay tree, NewAssignment assignment) {
        var standing = standing(tree, assignment.technique());
        requireDays(assignment, tree.on());
        refuseSecond(tree, assignment.technique());
        var told = tree.tell(standing);
        refuseSettled(told);
        StepWriter.noteOf(assignment.note());
        var opensInTime = seasonWillBeOpen(tree, standing, assignment.from());
        return new Passed(told, new WaiverCheck(told, opensInTime).check(assignment.waivers()));
    }

    /** What is wrong with one tree of many, told at its place. */
    static List<Fault> ofTree(int place, TreeOnDay tree, Problem problem) {
        var at = "trees[%d].".formatted(place);
        var name = tree.tree().label() + ": ";
        if (problem.faults().isEmpty() || problem.status() == CONFLICT) {
            return List.of(new Fault(at + "treeId", name + problem.detail()));
        }
        return problem.faults().stream()
                .map(
                        fault ->
                                OF_ALL.contains(fault.field())
                                        ? fault
                                        : new Fault(at + fault.field(), name + fault.message()))
                .toList();
    }

    private static final int CONFLICT = 409;

    /** Fields that are said once for all trees. */
    private static final List<String> OF_ALL = List.of("technique", "from", "until", "note");

    static Standing standing(TreeOnDay tree, String technique) {
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

    static void refuseSecond(TreeOnDay tree, String technique) {
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
