package org.ripewood.records;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.problems.DecimalText;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;

/** Reads a value as it was typed. */
final class ValueText {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,15}(\\.\\d{1,15})?");
    private static final String FIELD = "value";

    private ValueText() {}

    /**
     * The value a text stands for.
     *
     * @throws Refused 400 naming what was found and what was expected
     */
    static Value read(Fact fact, String text) {
        var typed = text.strip();
        var value =
                switch (fact.kind()) {
                    case NUMBER -> number(typed);
                    case FLAG -> flag(typed);
                    case WORD -> word(fact, typed);
                };
        var refusal = refusalOf(fact, value);
        if (!refusal.isEmpty()) {
            throw Refused.invalid(FIELD, refusal);
        }
        return value;
    }

    private static Value number(String typed) {
        var text = DecimalText.withPoint(typed);
        if (NUMBER.matcher(text).matches()) {
            return Value.of(Double.parseDouble(text));
        }
        throw Refused.invalid(
                FIELD,
                "expected a number such as 12.5, found “%s”.%s"
                        .formatted(typed, DecimalText.maybe(typed)));
    }

    private static Value flag(String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "yes" -> Value.of(true);
            case "no" -> Value.of(false);
            default ->
                    throw Refused.invalid(
                            FIELD,
                            "expected yes or no, found “%s”.%s".formatted(typed, flagMaybe(typed)));
        };
    }

    private static String flagMaybe(String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "true", "y", "1" -> " Maybe “yes”.";
            case "false", "n", "0" -> " Maybe “no”.";
            default -> Suggestion.maybe(List.of("yes", "no"), typed);
        };
    }

    private static Value word(Fact fact, String typed) {
        var lower = typed.toLowerCase(Locale.ROOT);
        if (!fact.words().contains(lower)) {
            throw Refused.invalid(
                    FIELD,
                    "expected one of %s, found “%s”.%s"
                            .formatted(
                                    String.join(", ", fact.words()),
                                    typed,
                                    Suggestion.maybe(fact.words(), typed)));
        }
        return Value.of(lower);
    }

    private static String refusalOf(Fact fact, Value value) {
        var refusal = fact.refusalOf(value);
        if (refusal != null) {
            return refusal;
        }
        if (value instanceof Value.Number number) {
            return refusalOfStage(fact, number.amount());
        }
        return "";
    }

    /** Stages are codes: whole, and flowers have a track of their own beside the leaves. */
    private static String refusalOfStage(Fact fact, double code) {
        return switch (fact) {
            case GROWTH_STAGE ->
                    code == Math.rint(code)
                            ? ""
                            : "expected a whole BBCH code from 0 to 99, found " + code;
            case FLOWER_STAGE ->
                    code == 0 || (code == Math.rint(code) && code >= 51 && code <= 89)
                            ? ""
                            : "expected a whole BBCH code from 51 to 89, or 0 for none, found "
                                    + code;
            default -> "";
        };
    }
}
