package org.ripewood.firstlook;

import java.math.BigDecimal;
import java.util.Map;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;

/**
 * An answer to choose by its picture.
 *
 * @param code names it within its question
 * @param label in plain words
 * @param seen what is recorded of the tree; empty where the record is no observation, as of a
 *     container, or where there is nothing to record
 * @param shows what it helps the service to work out, for finding whether the question can decide
 *     anything; never recorded
 */
public record LookAnswer(String code, String label, Map<Fact, Value> seen, Map<Fact, Value> shows) {
    public LookAnswer {
        seen = Map.copyOf(seen);
        shows = Map.copyOf(shows);
    }

    /** A value as an observation takes it. */
    public static String text(Value value) {
        if (value instanceof Value.Number number) {
            return BigDecimal.valueOf(number.amount()).stripTrailingZeros().toPlainString();
        }
        if (value instanceof Value.Flag flag) {
            return flag.set() ? "yes" : "no";
        }
        return ((Value.Word) value).word();
    }
}
