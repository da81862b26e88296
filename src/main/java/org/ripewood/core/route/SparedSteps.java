package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Truth;

/**
 * Which steps a route does without: those nobody has said the tree needs, and those whose need ends
 * with another step of the route, such as a root graft where a ground layer comes first.
 *
 * <p>Of two steps that end each other's need one is enough: the one that may begin sooner, then the
 * one told for the kind of tree, then the one of the earlier stage, then the lighter one. A step
 * that another one on the route comes after stays.
 */
final class SparedSteps {

    /** What is done where one is enough. */
    private static final Comparator<StepAhead> BETTER =
            Comparator.<StepAhead, LocalDate>comparing(
                            step -> step.opens() == null ? LocalDate.MAX : step.opens())
                    .thenComparing(
                            step ->
                                    step.rule().species().isEmpty()
                                            && step.rule().groups().isEmpty())
                    .thenComparing(StepAhead::stage)
                    .thenComparing(step -> step.rule().stress())
                    .thenComparing(StepAhead::code);

    private final List<StepAhead> left;
    private final List<StepAhead> unknown = new ArrayList<>();

    private SparedSteps(List<StepAhead> all) {
        left = new ArrayList<>(all);
    }

    /**
     * Parts the steps.
     *
     * @return what is left of them, and those of which it is not known whether the tree needs them
     */
    static SparedSteps of(List<StepAhead> all) {
        var spared = new SparedSteps(all);
        spared.goThrough();
        return spared;
    }

    /** The steps of the route; one that goes after another of them may not begin as it stands. */
    List<StepAhead> left() {
        var codes = left.stream().map(StepAhead::code).collect(Collectors.toSet());
        return left.stream()
                .map(
                        step ->
                                step.goesAfter().stream().anyMatch(codes::contains)
                                        ? step.notOpen()
                                        : step)
                .toList();
    }

    /** Those taken not to be needed, which is told. */
    List<StepAhead> unknown() {
        return List.copyOf(unknown);
    }

    /** Whatever is spared may set another one free, so it goes on until nothing is. */
    private void goThrough() {
        @Nullable StepAhead next = next();
        while (next != null) {
            left.remove(next);
            next = next();
        }
    }

    private @Nullable StepAhead next() {
        for (var step : left) {
            if (!isWaitedFor(step) && isNeedUnknown(step)) {
                unknown.add(step);
                return step;
            }
        }
        for (var step : left) {
            var ends = isWaitedFor(step) ? Truth.YES : leastNeed(step);
            if (ends != Truth.YES) {
                if (ends == Truth.UNKNOWN) {
                    unknown.add(step);
                }
                return step;
            }
        }
        return null;
    }

    private boolean isWaitedFor(StepAhead step) {
        return left.stream().anyMatch(other -> other.rule().after().contains(step.code()));
    }

    private static boolean isNeedUnknown(StepAhead step) {
        return step.standing().reasons().stream()
                .anyMatch(
                        reason ->
                                reason instanceof Reason.OfNeed need
                                        && need.truth() == Truth.UNKNOWN);
    }

    /** What is left of a step's need once another step that goes before it is done. */
    private Truth leastNeed(StepAhead step) {
        var need = step.rule().neededWhen();
        if (need == null || need.holds(step.facts()) != Truth.YES) {
            return Truth.YES;
        }
        var least = Truth.YES;
        for (var other : left) {
            if (!other.code().equals(step.code()) && mayTakeThePlaceOf(other, step)) {
                least = least.and(need.holds(after(other, step.facts())));
            }
        }
        return least;
    }

    private static boolean mayTakeThePlaceOf(StepAhead other, StepAhead step) {
        var comesAfter =
                other.rule().after().contains(step.code())
                        || other.goesAfter().contains(step.code())
                        || step.rule().after().contains(other.code());
        if (comesAfter || other.stage() > step.stage() || (step.isOpen() && !other.isOpen())) {
            return false;
        }
        return !ends(step, other) || BETTER.compare(other, step) < 0;
    }

    /** Whether a step ends the need of another one. */
    private static boolean ends(StepAhead step, StepAhead other) {
        var need = other.rule().neededWhen();
        return need != null && need.holds(after(step, other.facts())) != Truth.YES;
    }

    /** The facts as a step leaves them. */
    private static Facts after(StepAhead step, Facts before) {
        var changed = step.effects().stream().map(Effect::fact).collect(Collectors.toSet());
        var evidence = new ArrayList<Evidence>();
        before.all().stream()
                .filter(known -> !changed.contains(known.fact()))
                .filter(known -> !step.unsettles().contains(known.fact()))
                .forEach(evidence::add);
        step.effects()
                .forEach(
                        effect ->
                                evidence.add(
                                        Evidence.derived(
                                                effect.fact(),
                                                effect.becomes(),
                                                LocalDate.EPOCH,
                                                "the work")));
        return Facts.of(evidence);
    }
}
