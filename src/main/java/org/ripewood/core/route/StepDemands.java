package org.ripewood.core.route;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Condition;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.LoadBudget;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.StageStanding;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.season.Outlook;

/**
 * What has to be so before each step: its criteria; what the stages before its own ask of a tree
 * that goes on from them; and that steps of earlier stages have had their effect, not only been
 * done once. Of a step that may begin now only its criteria are asked, and the effect of those it
 * goes after.
 */
final class StepDemands {

    private record Asked(Fact fact, Requirement requirement) {}

    private final Subject subject;
    private final LocalDate on;
    private final List<StageStanding> stages;
    private final List<StepAhead> steps;
    private final Map<Asked, Outlook> forecasts = new HashMap<>();
    private final Map<String, List<Demand>> byStep = new HashMap<>();

    /**
     * @param stages how far the tree is through each, the first first
     */
    StepDemands(Subject subject, LocalDate on, List<StageStanding> stages, List<StepAhead> steps) {
        this.subject = subject;
        this.on = on;
        this.stages = List.copyOf(stages);
        this.steps = steps;
        steps.forEach(step -> byStep.put(step.code(), List.copyOf(gather(step).values())));
    }

    List<Demand> of(StepAhead step) {
        return byStep.getOrDefault(step.code(), List.of());
    }

    private Map<Asked, Demand> gather(StepAhead step) {
        var demands = new LinkedHashMap<Asked, Demand>();
        for (var reason : step.standing().reasons()) {
            if (reason instanceof Reason.OfCriterion criterion) {
                put(demands, demand(criterion, step));
            } else if (reason instanceof Reason.OfLoad load && load.truth() == Truth.NO) {
                strength(load, step).forEach(demand -> put(demands, demand));
            }
        }
        // stages stand in their order, the first is number 1
        int passed = step.isOpen() ? 0 : Math.min(step.stage() - 1, stages.size());
        for (int stage = 1; stage <= passed; stage++) {
            for (var reason : stages.get(stage - 1).reasons()) {
                if (reason instanceof Reason.OfCriterion criterion) {
                    put(demands, ofStage(criterion));
                }
            }
        }
        for (var earlier : steps) {
            var need = earlier.rule().neededWhen();
            if (need != null && hasItsEffectFirst(earlier, step)) {
                put(demands, need, earlier.facts());
            }
        }
        return demands;
    }

    private static boolean hasItsEffectFirst(StepAhead earlier, StepAhead step) {
        return step.goesAfter().contains(earlier.code())
                || (earlier.stage() < step.stage() && !step.isOpen());
    }

    /** What has to become so for a need to end. */
    private void put(Map<Asked, Demand> demands, Condition need, Facts facts) {
        for (var demand : Demand.of(need, false, facts)) {
            put(demands, demand.truth() == Truth.NO ? demand.with(forecast(demand)) : demand);
        }
    }

    private static void put(Map<Asked, Demand> demands, Demand demand) {
        demands.putIfAbsent(new Asked(demand.fact(), demand.requirement()), demand);
    }

    private Demand ofStage(Reason.OfCriterion asked) {
        var evidence = asked.evidence();
        var demand =
                new Demand(
                        asked.criterion().fact(),
                        asked.required(),
                        asked.key(),
                        asked.truth(),
                        evidence == null ? null : evidence.value(),
                        null);
        return demand.truth() == Truth.NO ? demand.with(forecast(demand)) : demand;
    }

    private static Demand demand(Reason.OfCriterion reason, StepAhead step) {
        var evidence = reason.evidence();
        return new Demand(
                reason.criterion().fact(),
                reason.required(),
                reason.key(),
                reason.truth(),
                evidence == null ? null : evidence.value(),
                waitOf(reason, step));
    }

    private static @Nullable Outlook waitOf(Reason reason, StepAhead step) {
        return step.waits().stream()
                .filter(wait -> wait.reason().key().equals(reason.key()))
                .map(wait -> wait.outlook())
                .findFirst()
                .orElse(null);
    }

    /** A tree too weak for a load has to grow stronger first. */
    private List<Demand> strength(Reason.OfLoad load, StepAhead step) {
        if (load.added() <= load.budget() || !(waitOf(load, step) instanceof Outlook.Unsaid)) {
            return List.of();
        }
        var strong = new Requirement.AtLeast(LoadBudget.vigourFor(load.added()));
        var needed = new Condition.Test(Fact.VIGOUR_INDEX, strong);
        return Demand.of(needed, true, subject.facts());
    }

    private Outlook forecast(Demand demand) {
        return forecasts.computeIfAbsent(
                new Asked(demand.fact(), demand.requirement()),
                asked -> subject.forecasts().whenMet(asked.fact(), asked.requirement(), on));
    }
}
