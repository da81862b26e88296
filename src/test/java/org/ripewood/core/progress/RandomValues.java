package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Values of facts that are likely to meet, to touch or to miss what the rules ask of them. */
final class RandomValues {

    private final SplittableRandom random;
    private final Map<Fact, List<Requirement>> asked = new EnumMap<>(Fact.class);

    RandomValues(SplittableRandom random, Rules rules, Traits traits) {
        this.random = random;
        for (var rule : rules.techniques()) {
            for (var criterion : rule.criteria()) {
                ask(criterion.fact(), criterion.requirementFor(traits));
            }
            collect(rule.neededWhen());
        }
    }

    private void collect(@Nullable Condition condition) {
        if (condition instanceof Condition.Test test) {
            ask(test.fact(), test.requirement());
        } else if (condition instanceof Condition.All all) {
            all.parts().forEach(this::collect);
        } else if (condition instanceof Condition.Any any) {
            any.parts().forEach(this::collect);
        } else if (condition instanceof Condition.Not not) {
            collect(not.part());
        }
    }

    private void ask(Fact fact, Requirement requirement) {
        asked.computeIfAbsent(fact, none -> new ArrayList<>()).add(requirement);
    }

    Value value(Fact fact, boolean meeting) {
        var requirements = asked.getOrDefault(fact, List.of());
        return meeting && !requirements.isEmpty()
                ? meeting(fact, requirements.get(random.nextInt(requirements.size())))
                : any(fact);
    }

    private Value meeting(Fact fact, Requirement requirement) {
        var slack = random.nextInt(3) == 0 ? 0 : random.nextDouble();
        if (requirement instanceof Requirement.AtLeast least) {
            return Value.of(least.bound() + slack * (fact.most() - least.bound()));
        }
        if (requirement instanceof Requirement.AtMost most) {
            return Value.of(most.bound() - slack * (most.bound() - fact.least()));
        }
        if (requirement instanceof Requirement.Is is) {
            return is.value();
        }
        var words = ((Requirement.OneOf) requirement).words().stream().sorted().toList();
        return Value.of(words.get(random.nextInt(words.size())));
    }

    private Value any(Fact fact) {
        return switch (fact.kind()) {
            case NUMBER ->
                    Value.of(fact.least() + random.nextDouble() * (fact.most() - fact.least()));
            case FLAG -> Value.of(random.nextBoolean());
            case WORD -> Value.of(fact.words().get(random.nextInt(fact.words().size())));
        };
    }
}
