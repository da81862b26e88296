package org.ripewood.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ripewood.core.progress.Condition;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Rulebook;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Subject;
import org.ripewood.core.progress.TechniqueRule;
import org.ripewood.core.progress.Traits;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.progress.WorkLedger;

/**
 * Searches for a tree on which a technique is READY: asks the rulebook what a tree of which nothing
 * is known would have to be, tries the values at and beside every bound, and then every growth
 * stage.
 */
final class ReadySearch {

    /** A tree on which the technique is READY, and what the technique asked of each fact. */
    record Found(
            Map<Fact, Value> values,
            int stage,
            Map<Fact, List<Requirement>> required,
            Standing standing) {}

    private static final LocalDate ON = LocalDate.of(2024, 3, 1);
    private static final int MOST_TRIES = 200_000;

    private final Rulebook rulebook;
    private final TechniqueRule rule;
    private final Traits traits;
    private int tries;

    ReadySearch(Rulebook rulebook, TechniqueRule rule, Traits traits) {
        this.rulebook = rulebook;
        this.rule = rule;
        this.traits = traits;
    }

    Optional<Found> find() {
        var required = required();
        var choices = choices(required);
        return choose(
                new ArrayList<>(choices.keySet()), choices, new EnumMap<>(Fact.class), required);
    }

    /** What the criteria ask of each fact, with the overrides of the species. */
    private Map<Fact, List<Requirement>> required() {
        var required = new EnumMap<Fact, List<Requirement>>(Fact.class);
        for (var reason : judge(Map.of(), 0).reasons()) {
            if (reason instanceof Reason.OfCriterion asked) {
                required.computeIfAbsent(asked.criterion().fact(), fact -> new ArrayList<>())
                        .add(asked.required());
            }
        }
        return required;
    }

    /** For each fact that matters the values that meet all criteria, the telling ones first. */
    private Map<Fact, List<Value>> choices(Map<Fact, List<Requirement>> required) {
        var bounds = new EnumMap<Fact, Set<Requirement>>(Fact.class);
        required.forEach((fact, asked) -> bounds.put(fact, new LinkedHashSet<>(asked)));
        // How strong it is decides how much load a tree may carry, whether or not it is a
        // criterion.
        bounds.computeIfAbsent(Fact.VIGOUR_INDEX, fact -> new LinkedHashSet<>());
        // Flowers may open or close the season.
        bounds.computeIfAbsent(Fact.FLOWER_STAGE, fact -> new LinkedHashSet<>());
        if (rule.neededWhen() != null) {
            collect(rule.neededWhen(), bounds);
        }
        var choices = new EnumMap<Fact, List<Value>>(Fact.class);
        bounds.forEach(
                (fact, near) ->
                        choices.put(
                                fact,
                                candidates(fact, near).stream()
                                        .filter(
                                                value ->
                                                        required
                                                                .getOrDefault(fact, List.of())
                                                                .stream()
                                                                .allMatch(
                                                                        asked ->
                                                                                asked.metBy(value)))
                                        .toList()));
        return choices;
    }

    private static void collect(Condition condition, Map<Fact, Set<Requirement>> bounds) {
        if (condition instanceof Condition.Test test) {
            bounds.computeIfAbsent(test.fact(), fact -> new LinkedHashSet<>())
                    .add(test.requirement());
        } else if (condition instanceof Condition.All all) {
            all.parts().forEach(part -> collect(part, bounds));
        } else if (condition instanceof Condition.Any any) {
            any.parts().forEach(part -> collect(part, bounds));
        } else if (condition instanceof Condition.Not not) {
            collect(not.part(), bounds);
        }
    }

    /** Flags and words all; numbers at and just beside every bound, and both ends. */
    static List<Value> candidates(Fact fact, Set<Requirement> bounds) {
        return switch (fact.kind()) {
            case FLAG -> List.of(Value.of(true), Value.of(false));
            case WORD -> fact.words().stream().map(Value::of).toList();
            case NUMBER -> numbers(fact, bounds);
        };
    }

    private static List<Value> numbers(Fact fact, Set<Requirement> bounds) {
        var amounts = new TreeSet<Double>();
        amounts.add(fact.least());
        amounts.add(fact.most());
        if (fact == Fact.FLOWER_STAGE) {
            amounts.addAll(List.of(55.0, 65.0, 69.0, 70.0, 75.0));
        }
        for (var bound : bounds) {
            if (bound instanceof Requirement.AtLeast least) {
                addNear(amounts, least.bound());
            } else if (bound instanceof Requirement.AtMost most) {
                addNear(amounts, most.bound());
            }
        }
        return amounts.descendingSet().stream()
                .filter(amount -> amount >= fact.least() && amount <= fact.most())
                .map(Value::of)
                .toList();
    }

    private static void addNear(Set<Double> amounts, double bound) {
        amounts.add(bound);
        amounts.add(bound + 0.01);
        amounts.add(bound - 0.01);
        amounts.add(bound + 1);
        amounts.add(bound - 1);
    }

    private Optional<Found> choose(
            List<Fact> facts,
            Map<Fact, List<Value>> choices,
            Map<Fact, Value> chosen,
            Map<Fact, List<Requirement>> required) {
        if (tries > MOST_TRIES) {
            return Optional.empty();
        }
        if (chosen.size() == facts.size()) {
            return inAnySeason(chosen, required);
        }
        var fact = facts.get(chosen.size());
        for (var value : choices.getOrDefault(fact, List.of())) {
            chosen.put(fact, value);
            if (couldBeNeeded(chosen)) {
                var found = choose(facts, choices, chosen, required);
                if (found.isPresent()) {
                    return found;
                }
            }
            chosen.remove(fact);
        }
        return Optional.empty();
    }

    private boolean couldBeNeeded(Map<Fact, Value> chosen) {
        var needed = rule.neededWhen();
        return needed == null || needed.holds(facts(chosen)) != Truth.NO;
    }

    private Optional<Found> inAnySeason(
            Map<Fact, Value> chosen, Map<Fact, List<Requirement>> required) {
        for (int stage = 0; stage < 100; stage++) {
            tries++;
            var standing = judge(chosen, stage);
            if (standing.verdict() == Verdict.READY) {
                return Optional.of(
                        new Found(new EnumMap<>(chosen), stage, Map.copyOf(required), standing));
            }
            if (standing.verdict() != Verdict.SEASON && standing.verdict() != Verdict.MEASURE) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** How the technique stands on a rested tree of a skilled keeper, all that comes first done. */
    Standing judge(Map<Fact, Value> values, int stage) {
        var before = new HashMap<String, LocalDate>();
        rule.after().forEach(code -> before.put(code, ON.minusYears(2)));
        var skill = rule.skillLesson();
        var subject =
                new Subject(
                        traits,
                        facts(values),
                        new WorkLedger(List.of(), 50),
                        before,
                        skill == null ? Set.of() : Set.of(skill),
                        day -> stage);
        return rulebook.standing(subject, rule.code(), ON);
    }

    private static Facts facts(Map<Fact, Value> values) {
        return Facts.of(
                values.entrySet().stream()
                        .map(
                                known ->
                                        new Evidence(
                                                known.getKey(),
                                                known.getValue(),
                                                ON,
                                                Source.INSTRUCTOR,
                                                "an instructor",
                                                1))
                        .toList());
    }
}
