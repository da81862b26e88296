package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Condition;
import org.ripewood.core.progress.DoseRule;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.LoadBudget;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.progress.StageStanding;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.season.Outlook;

/**
 * The route of a tree as the rulebook judges it today.
 *
 * <p>On it are the steps that are needed today and those their work makes needed. A step that
 * changes a fact comes before those that need the fact, and no step begins while one of an earlier
 * stage is ahead or has not had its effect. What growing brings waits for its forecast; what only
 * work and time change takes the growing seasons that the content says, from the work on. What
 * nobody has looked at lately is assumed to be found met, and a work not to be needed; what nothing
 * is said of, and skills, to be there at the start of the next growing season. All of that is told
 * in {@link Route#unsaid}. Load, quiet, heavy works, doses and seasons are simulated, and so are
 * clocks: days since a work that comes first on this route begin with it.
 */
public final class TreeRoute {

    /** The vigour taken for the budget of loads where it is not known: a middling tree. */
    private static final double MIDDLING_VIGOUR = 50;

    /** The key of the reason that asks whether a technique is needed. */
    private static final String NEEDED = "needed";

    private final RouteRules rules;
    private final Subject subject;
    private final LocalDate on;
    private final List<StepAhead> ahead;
    private final StepDemands demands;
    private final FactWorks works;
    private final StepOrder order;

    private TreeRoute(
            RouteRules rules,
            Subject subject,
            LocalDate on,
            List<StageStanding> stages,
            List<StepAhead> ahead) {
        this.rules = rules;
        this.subject = subject;
        this.on = on;
        this.ahead = ahead;
        demands = new StepDemands(subject, on, stages, ahead);
        works = new FactWorks(rules.durations(), subject.traits());
        order = new StepOrder(ahead);
        putInOrder();
    }

    /**
     * Simulates a tree's way to a goal stage; see {@link Route#simulate} for method and limits.
     *
     * @throws IllegalArgumentException when the species is not in the rulebook, or draws are out of
     *     range
     */
    public static Route simulate(
            Rulebook rulebook,
            RouteRules rules,
            Subject subject,
            LocalDate on,
            int goalStageOrder,
            int draws,
            long seed) {
        var openings = rulebook.openings(subject, on);
        var all = StepsAhead.of(rulebook, rules, subject, on, openings);
        var spared = SparedSteps.of(all);
        var tree = new TreeRoute(rules, subject, on, openings.stages(), spared.left());
        double vigour = subject.facts().number(Fact.VIGOUR_INDEX);
        double budget = LoadBudget.of(Double.isNaN(vigour) ? MIDDLING_VIGOUR : vigour);
        var start =
                new RouteStart(
                        on, subject.ledger(), budget, subject.stages(), rules.durations().spread());
        var route = Route.simulate(start, tree.steps(), goalStageOrder, draws, seed);
        return route.alsoUnsaid(
                spared.unknown().stream()
                        .filter(step -> step.stage() <= goalStageOrder)
                        .map(TreeRoute::takenNotToBeNeeded)
                        .toList());
    }

    private static Route.Unsaid takenNotToBeNeeded(StepAhead step) {
        return new Route.Unsaid(
                step.code(),
                NEEDED,
                NEEDED,
                "Whether the tree needs it is not known.",
                Wait.Assumption.MET_WHEN_LOOKED_AT);
    }

    /**
     * What the content says, and what makes another step needed; then what has to come about first,
     * then what would be lost, then the rest. Before a step that may begin now goes only what the
     * content says and what may begin as soon.
     */
    private void putInOrder() {
        for (var step : ahead) {
            ahead.stream()
                    .filter(other -> step.goesAfter().contains(other.code()))
                    .forEach(other -> order.put(other, step));
        }
        for (var step : ahead) {
            ahead.stream()
                    .filter(other -> makesNeeded(other, step))
                    .forEach(other -> order.put(other, step));
        }
        for (var pass : Pass.values()) {
            for (var step : ahead) {
                for (var demand : demands.of(step)) {
                    ahead.stream()
                            .filter(other -> pass.takes(demand, works.of(other, demand)))
                            .filter(other -> !isBroughtBefore(demand, other, step))
                            .forEach(other -> put(other, step, pass));
                }
            }
        }
    }

    private void put(StepAhead other, StepAhead step, Pass pass) {
        if (!step.isOpen() || (pass == Pass.LOST && isDueNoLater(other, step))) {
            order.put(other, step);
        } else if (pass == Pass.LOST) {
            order.putWhateverTheStage(step, other);
        }
    }

    /** Whether a step may begin no later than another one that may begin now, and stands first. */
    private static boolean isDueNoLater(StepAhead other, StepAhead step) {
        return other.opens() != null
                && step.opens() != null
                && !other.opens().isAfter(step.opens())
                && other.stage() <= step.stage();
    }

    /** Whether a step was put on the route because of what another one leaves behind. */
    private static boolean makesNeeded(StepAhead other, StepAhead step) {
        var need = step.rule().neededWhen();
        return need != null
                && !step.isOpen()
                && other.stage() <= step.stage()
                && other.effects().stream().anyMatch(effect -> isAskedBy(effect, need));
    }

    /** Whether what a work makes of a fact is what a need asks for. */
    private static boolean isAskedBy(Effect effect, Condition need) {
        if (need instanceof Condition.Test test) {
            return test.fact() == effect.fact() && test.requirement().metBy(effect.becomes());
        }
        if (need instanceof Condition.All all) {
            return all.parts().stream().anyMatch(part -> isAskedBy(effect, part));
        }
        return need instanceof Condition.Any any
                && any.parts().stream().anyMatch(part -> isAskedBy(effect, part));
    }

    /** What a step of an earlier stage brings need not wait for one of the same stage. */
    private boolean isBroughtBefore(Demand demand, StepAhead other, StepAhead step) {
        return other.stage() == step.stage()
                && works.of(other, demand) == FactWorks.Kind.BRINGS
                && ahead.stream()
                        .filter(first -> first.stage() < step.stage())
                        .anyMatch(first -> works.of(first, demand) == FactWorks.Kind.BRINGS);
    }

    private enum Pass {
        UNMET,
        LOST,
        REST;

        boolean takes(Demand demand, FactWorks.Kind does) {
            return switch (this) {
                case UNMET ->
                        demand.truth() != Truth.YES
                                && does != FactWorks.Kind.NOTHING
                                && does != FactWorks.Kind.LOSES;
                case LOST -> does == FactWorks.Kind.LOSES;
                case REST -> does != FactWorks.Kind.NOTHING;
            };
        }
    }

    private List<RouteStep> steps() {
        return ahead.stream().map(this::step).toList();
    }

    private RouteStep step(StepAhead step) {
        var rule = step.rule();
        var open = rule.season().openStages(subject.traits(), subject.place());
        var first = ahead.stream().filter(other -> order.precedes(other, step)).toList();
        var found = new StepWaits(subject, on, rules.durations(), works, first, step);
        demands.of(step).forEach(found::add);
        found.addOthers();
        if (open.isEmpty()) {
            found.waits.add(flowers());
        }
        return new RouteStep(
                rule.code(),
                rule.stageOrder(),
                order.before(step),
                open.isEmpty() ? RouteStep.ANY_TIME : open,
                rule.stress(),
                rule.recoveryDays(),
                rule.quietDaysBefore(),
                dose(rule.dose()),
                found.waits,
                found.lags,
                null,
                1,
                0,
                step.isOpen() ? RouteStep.Turn.LEADS : RouteStep.Turn.WAITS);
    }

    private static Wait flowers() {
        return new Wait(
                Fact.FLOWER_STAGE.code(),
                "season",
                new Outlook.Unsaid("Its season goes by the flowers, which are not forecast."),
                Wait.Assumption.MET_NEXT_SEASON);
    }

    /** A tree may bear less than the technique's own limit, or more. */
    private @Nullable DoseRule dose(@Nullable DoseRule dose) {
        return dose == null
                ? null
                : dose.forTree(subject.traits(), subject.facts().number(Fact.VIGOUR_INDEX));
    }
}
