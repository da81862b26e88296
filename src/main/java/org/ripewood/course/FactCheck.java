package org.ripewood.course;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.problems.Suggestion;

/** Holds comparisons against what kind of fact they compare. */
final class FactCheck {

    /** The ways to compare a fact, of which a test has one. */
    static final List<String> COMPARISONS = List.of("atLeast", "atMost", "is", "oneOf");

    private static final String UNKNOWN = "unknown";

    private final Faults faults;

    FactCheck(Faults faults) {
        this.faults = faults;
    }

    /** Checks a condition with all that is nested in it. */
    void checkCondition(Part condition) {
        condition.each("all").forEach(this::checkCondition);
        condition.each("any").forEach(this::checkCondition);
        if (condition.has("not")) {
            checkCondition(condition.at("not"));
        }
        if (condition.has("fact")) {
            checkTest(condition);
        }
    }

    /** Checks one test of one fact. */
    void checkTest(Part test) {
        var fact = fact(test);
        if (fact == null) {
            return;
        }
        if (fact.scope() != Fact.Scope.TREE) {
            faults.add(
                    test.at("fact"),
                    "\"%s\", read at a place on the tree".formatted(fact.code()),
                    "a fact of the tree as a whole");
        }
        checkComparisons(fact, test);
    }

    /** Checks the comparisons of a part that leaves the fact to what holds it. */
    void checkComparisons(Fact fact, Part test) {
        COMPARISONS.stream()
                .filter(test::has)
                .forEach(comparison -> checkComparison(fact, comparison, test.at(comparison)));
    }

    private void checkComparison(Fact fact, String comparison, Part bound) {
        var fitting =
                switch (fact.kind()) {
                    case NUMBER -> List.of("atLeast", "atMost");
                    case FLAG -> List.of("is");
                    case WORD -> List.of("is", "oneOf");
                };
        if (!fitting.contains(comparison)) {
            faults.add(
                    bound,
                    "%s on %s, which is a %s".formatted(comparison, fact.code(), kind(fact)),
                    String.join(" or ", fitting));
        } else if (comparison.equals("oneOf")) {
            bound.each().forEach(word -> checkValue(fact, word));
        } else if (bound.value().isNumber() == (fact.kind() == Fact.Kind.NUMBER)) {
            // A word for a number or the other way round is the schema's to tell.
            checkValue(fact, bound);
        }
    }

    /** Checks that a value can be the fact's. */
    void checkValue(Fact fact, Part at) {
        var value = value(at);
        if (value != null && fact.refusalOf(value) != null) {
            faults.add(at, at.value().toString(), plausible(fact, at.text()));
        }
    }

    /** Whether an effect says that the work leaves a fact to be measured again. */
    static boolean unsettles(Part effect) {
        return UNKNOWN.equals(effect.text("is"));
    }

    /** The fact a part names, or null when it names none. */
    static @Nullable Fact fact(Part part) {
        var code = part.text("fact");
        return code == null ? null : Fact.find(code).orElse(null);
    }

    /** The value written down, or null when it is none a fact could have. */
    static @Nullable Value value(Part at) {
        var value = at.value();
        if (value.isBoolean()) {
            return Value.of(value.booleanValue());
        }
        if (value.isNumber()) {
            return Value.of(value.doubleValue());
        }
        var text = at.text();
        return text == null || text.isBlank() ? null : Value.of(text);
    }

    private static String plausible(Fact fact, @Nullable String found) {
        return switch (fact.kind()) {
            case NUMBER ->
                    "a number from %s to %s for %s"
                            .formatted(plain(fact.least()), plain(fact.most()), fact.code());
            case FLAG -> "true or false for " + fact.code();
            case WORD ->
                    "one of %s for %s.%s"
                            .formatted(
                                    String.join(", ", fact.words()),
                                    fact.code(),
                                    found == null ? "" : Suggestion.maybe(fact.words(), found));
        };
    }

    private static String kind(Fact fact) {
        return switch (fact.kind()) {
            case NUMBER -> "number";
            case FLAG -> "yes or no";
            case WORD -> "word";
        };
    }

    private static String plain(double amount) {
        return amount == Math.rint(amount) ? String.valueOf((long) amount) : String.valueOf(amount);
    }
}
