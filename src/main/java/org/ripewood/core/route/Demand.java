package org.ripewood.core.route;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Condition;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Requirement;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.Outlook;

/**
 * One fact that has to be so before a step.
 *
 * @param key names it within the step, as a criterion's key does
 * @param truth whether it is so today
 * @param value what is known today; null when nothing is
 * @param outlook when it will be so by itself; null when nobody was asked
 */
record Demand(
        Fact fact,
        Requirement requirement,
        String key,
        Truth truth,
        @Nullable Value value,
        @Nullable Outlook outlook) {

    private static final String CLOCK = "days_since_";

    /**
     * What has to become so for a condition to hold, or not to hold any more; nothing for what is
     * so already.
     *
     * <p>Of parts one of which is enough the first is taken of which something is known, since
     * nobody has said which way the tree will go; that days go by is nobody's aim, and comes last.
     */
    static List<Demand> of(Condition condition, boolean wanted, Facts facts) {
        if (condition.holds(facts) == (wanted ? Truth.YES : Truth.NO)) {
            return List.of();
        }
        if (condition instanceof Condition.Test test) {
            var asked = wanted ? test.requirement() : opposite(test.fact(), test.requirement());
            return asked == null ? List.of() : List.of(of(test.fact(), asked, facts));
        }
        if (condition instanceof Condition.Not not) {
            return of(not.part(), !wanted, facts);
        }
        boolean isAll = condition instanceof Condition.All;
        var parts =
                condition instanceof Condition.All all
                        ? all.parts()
                        : ((Condition.Any) condition).parts();
        var each = parts.stream().map(part -> of(part, wanted, facts)).toList();
        return isAll == wanted ? each.stream().flatMap(List::stream).toList() : oneOf(each);
    }

    private static List<Demand> oneOf(List<List<Demand>> ways) {
        return ways.stream()
                .filter(way -> !way.isEmpty())
                .min(
                        Comparator.<List<Demand>, Boolean>comparing(Demand::onlyWaits)
                                .thenComparing(Demand::isUnknown))
                .orElse(List.of());
    }

    private static boolean onlyWaits(List<Demand> way) {
        return way.stream().anyMatch(demand -> demand.fact().code().startsWith(CLOCK));
    }

    private static boolean isUnknown(List<Demand> way) {
        return way.stream().anyMatch(demand -> demand.truth() == Truth.UNKNOWN);
    }

    private static Demand of(Fact fact, Requirement asked, Facts facts) {
        var found = facts.find(fact);
        var value = found == null ? null : found.value();
        var truth = value == null ? Truth.UNKNOWN : Truth.of(asked.metBy(value));
        return new Demand(fact, asked, fact.code() + "." + asked.kind(), truth, value, null);
    }

    /** What a fact is when it is not this; null when that cannot be said. */
    private static @Nullable Requirement opposite(Fact fact, Requirement requirement) {
        if (requirement instanceof Requirement.AtLeast least) {
            return new Requirement.AtMost(Math.nextDown(least.bound()));
        }
        if (requirement instanceof Requirement.AtMost most) {
            return new Requirement.AtLeast(Math.nextUp(most.bound()));
        }
        if (requirement instanceof Requirement.OneOf one) {
            return others(fact, one.words());
        }
        var value = ((Requirement.Is) requirement).value();
        if (value instanceof Value.Flag flag) {
            return new Requirement.Is(Value.of(!flag.set()));
        }
        return value instanceof Value.Word word ? others(fact, Set.of(word.word())) : null;
    }

    private static @Nullable Requirement others(Fact fact, Set<String> words) {
        var others = new HashSet<>(fact.words());
        others.removeAll(words);
        return others.isEmpty() ? null : new Requirement.OneOf(others);
    }

    Demand with(@Nullable Outlook seen) {
        return new Demand(fact, requirement, key, truth, value, seen);
    }
}
