package org.ripewood.core.progress;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The weightiest evidence for each fact of one tree; facts nobody has looked at are absent. */
@SuppressWarnings("EnumOrdinal") // an array by fact, asked thousands of times for one board
public final class Facts {

    private static final int COUNT = Fact.values().length;

    private final @Nullable Evidence[] byFact;

    private Facts(@Nullable Evidence[] byFact) {
        this.byFact = byFact;
    }

    /** Keeps the weightiest evidence of each fact, in whatever order it comes. */
    public static Facts of(Iterable<Evidence> evidence) {
        @Nullable Evidence[] byFact = new Evidence[COUNT];
        for (var found : evidence) {
            var known = byFact[found.fact().ordinal()];
            if (known == null || Evidence.BY_WEIGHT.compare(known, found) < 0) {
                byFact[found.fact().ordinal()] = found;
            }
        }
        return new Facts(byFact);
    }

    /** The evidence for a fact, or null when there is none. */
    public @Nullable Evidence find(Fact fact) {
        return byFact[fact.ordinal()];
    }

    /** The number behind a fact, or NaN when it is not known or not a number. */
    public double number(Fact fact) {
        var found = byFact[fact.ordinal()];
        return found != null && found.value() instanceof Value.Number number
                ? number.amount()
                : Double.NaN;
    }

    /** All evidence, in the order of the facts. */
    public List<Evidence> all() {
        return Arrays.stream(byFact).filter(Objects::nonNull).map(Objects::requireNonNull).toList();
    }
}
