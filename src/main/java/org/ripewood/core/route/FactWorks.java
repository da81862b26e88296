package org.ripewood.core.route;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;

/** What the work of a step does to a fact that another step needs. */
final class FactWorks {

    static final Set<Fact> WOUND_FACTS =
            Set.of(Fact.LARGEST_OPENING_MM, Fact.OPEN_WOUNDS, Fact.SMALLEST_CLOSURE_PERCENT);

    /** What a work does. */
    enum Kind {
        /** It has nothing to do with the fact. */
        NOTHING,
        /** It is done because of the fact, and nobody has said what comes of it. */
        PURPOSE,
        /** The fact is as asked once it is done. */
        BRINGS,
        /** It undoes what is asked. */
        LOSES
    }

    private final Durations durations;
    private final Traits traits;

    FactWorks(Durations durations, Traits traits) {
        this.durations = durations;
        this.traits = traits;
    }

    Kind of(StepAhead step, Demand demand) {
        for (var effect : step.effects()) {
            if (effect.fact() == demand.fact()) {
                return demand.requirement().metBy(effect.becomes()) ? Kind.BRINGS : Kind.LOSES;
            }
        }
        if (startsClock(step, demand)) {
            return Kind.LOSES;
        }
        if (wounds(step, demand)) {
            return Kind.LOSES;
        }
        return isSlow(step, demand.fact()) || isDoneFor(step, demand.fact())
                ? Kind.PURPOSE
                : Kind.NOTHING;
    }

    private boolean isSlow(StepAhead step, Fact fact) {
        return !WOUND_FACTS.contains(fact) && slow(step, fact).isPresent();
    }

    /** Whether days that have to go by begin with the step. */
    static boolean startsClock(StepAhead step, Demand demand) {
        return step.clock() == demand.fact() && demand.requirement() instanceof Requirement.AtLeast;
    }

    /** Whether a wound of the step's is one too many, or wider than is asked for. */
    private boolean wounds(StepAhead step, Demand demand) {
        if (!step.wounding() || !WOUND_FACTS.contains(demand.fact())) {
            return false;
        }
        var slow = slow(step, demand.fact());
        if (slow.isPresent() && slow.get().takes().high() == 0) {
            return false;
        }
        if (demand.fact() == Fact.OPEN_WOUNDS
                && demand.requirement() instanceof Requirement.AtMost most
                && demand.truth() == Truth.YES
                && demand.value() instanceof Value.Number open) {
            return open.amount() + 1 > most.bound();
        }
        return true;
    }

    private static boolean isDoneFor(StepAhead step, Fact fact) {
        var need = step.rule().neededWhen();
        var asked = EnumSet.noneOf(Fact.class);
        if (need != null) {
            need.eachFact(asked::add);
        }
        return asked.contains(fact);
    }

    /** How long the fact takes once the step is done, where somebody has said so. */
    Optional<SlowChange> slow(StepAhead step, Fact fact) {
        var said = durations.after(step.code(), fact, traits);
        return said.isPresent() || !(step.wounding() && WOUND_FACTS.contains(fact))
                ? said
                : durations.after("", fact, traits);
    }

    /** The value a step leaves; what it was before where it changes nothing. */
    static @Nullable Value left(StepAhead step, Demand demand) {
        return step.effects().stream()
                .filter(effect -> effect.fact() == demand.fact())
                .map(Effect::becomes)
                .findFirst()
                .orElse(demand.value());
    }
}
