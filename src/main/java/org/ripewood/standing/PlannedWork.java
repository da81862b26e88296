package org.ripewood.standing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Strength;
import org.ripewood.core.progress.Truth;
import org.ripewood.course.Content;
import org.ripewood.course.Lesson;
import org.ripewood.course.Technique;

/**
 * Chooses what a tree does on a class day: a step the student has, else the best that could be
 * assigned, else nothing and why.
 */
final class PlannedWork {

    /** As many things to measure as fit on a bench card. */
    private static final int MOST_TO_MEASURE = 5;

    /**
     * What was chosen.
     *
     * @param technique null when nothing can be done that day
     */
    record Choice(
            @Nullable Technique technique,
            @Nullable Long stepId,
            String why,
            List<String> measureFirst) {}

    private final Content content;
    private final Usefulness usefulness;
    private final Headlines headlines;
    private final Set<String> taught;

    /**
     * @param lesson the day's lesson; what it teaches is preferred
     */
    PlannedWork(Content content, @Nullable Lesson lesson) {
        this.content = content;
        this.usefulness = new Usefulness(content);
        this.headlines = new Headlines(usefulness);
        this.taught = lesson == null ? Set.of() : Set.copyOf(lesson.teaches());
    }

    /**
     * @param seasonWaived ids of steps whose season an instructor let pass
     */
    Choice choose(TreeOnDay tree, Collection<Long> seasonWaived) {
        var steps =
                tree.open().values().stream()
                        .filter(step -> step.state.isWithStudent())
                        .filter(step -> tree.find(step.technique).isPresent())
                        .sorted(ChecklistMaker.SENT_BACK_FIRST)
                        .toList();
        for (var step : steps) {
            var standing = tree.find(step.technique).orElseThrow();
            if (hindrance(tree, step, standing, seasonWaived) == null) {
                return ofStep(step, standing);
            }
        }
        var free = bestFree(tree);
        if (free.isPresent()) {
            return ofProposal(free.get());
        }
        if (!steps.isEmpty()) {
            var step = steps.get(0);
            var standing = tree.find(step.technique).orElseThrow();
            return none(tree, hindrance(tree, step, standing, seasonWaived));
        }
        return none(tree, headlines.sentence(headlines.of(tree)));
    }

    private Choice ofStep(StepEntity step, Standing standing) {
        var why =
                step.state == StepState.SENT_BACK
                        ? "Sent back; to be put right."
                        : "Assigned on %s.".formatted(Wording.day(step.assignedOn));
        return new Choice(content.technique(step.technique), step.id(), why, unknownOf(standing));
    }

    private Choice ofProposal(Standing standing) {
        var why = taught.contains(standing.technique()) ? " Today's lesson teaches it." : "";
        return new Choice(
                content.technique(standing.technique()),
                null,
                "Ready on the day."
                        + why
                        + headlines.waitingFor(standing.technique())
                        + " To be assigned.",
                List.of());
    }

    private Choice none(TreeOnDay tree, @Nullable String why) {
        var measures =
                MeasureNext.of(content, tree.standings()).stream()
                        .limit(MOST_TO_MEASURE)
                        .map(PlannedWork::toMeasure)
                        .toList();
        return new Choice(null, null, why == null ? "" : why, measures);
    }

    private Optional<Standing> bestFree(TreeOnDay tree) {
        return tree.free().stream()
                .min(
                        Comparator.<Standing, Boolean>comparing(
                                        standing -> !taught.contains(standing.technique()))
                                .thenComparing(usefulness.mostUsefulFirst()));
    }

    /** Why a step the student has cannot be done that day; null when it can. */
    private @Nullable String hindrance(
            TreeOnDay tree, StepEntity step, Standing standing, Collection<Long> seasonWaived) {
        var title = content.technique(step.technique).title();
        var from = step.fromDay;
        if (from != null && from.isAfter(tree.on())) {
            return "“%s” is assigned from %s on.".formatted(title, Wording.day(from));
        }
        for (var reason : standing.reasons()) {
            if (hinders(reason, seasonWaived.contains(step.id()))) {
                var teller = new ReasonTeller(content, tree.subject().traits());
                return "“%s” is assigned, but not for this day: %s"
                        .formatted(title, teller.tell(reason, title).sentence());
            }
        }
        return null;
    }

    /** A season that is closed and was not waived; or a hold for the health of tree or person. */
    private static boolean hinders(Reason reason, boolean seasonWaived) {
        if (reason.truth() != Truth.NO) {
            return false;
        }
        return reason instanceof Reason.OfSeason
                ? !seasonWaived
                : reason.strength() == Strength.MUST;
    }

    private List<String> unknownOf(Standing standing) {
        var unknown = new ArrayList<String>();
        MeasureNext.eachUnknown(
                standing,
                fact -> {
                    var text = content.text(fact);
                    unknown.add(text.title() + ": " + text.how());
                });
        return unknown.stream().distinct().toList();
    }

    private static String toMeasure(Checklist.Measure measure) {
        return measure.title() + ": " + measure.how();
    }
}
