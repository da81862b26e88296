package org.ripewood.core.progress;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The weightiest evidence for each fact of one tree; facts nobody has looked at are absent. */
public final class Facts {

    private final Map<Fact, Evidence> byFact;

    private Facts(Map<Fact, Evidence> byFact) {
        this.byFact = byFact;
    }

    /** Keeps the weightiest evidence of each fact, in whatever order it comes. */
    public static Facts of(Iterable<Evidence> evidence) {
        var byFact = new EnumMap<Fact, Evidence>(Fact.class);
        for (var found : evidence) {
            byFact.merge(found.fact(), found, Facts::weightier);
        }
        return new Facts(byFact);
    }

    private static Evidence weightier(Evidence known, Evidence found) {
        return Evidence.BY_WEIGHT.compare(known, found) < 0 ? found : known;
    }

    /** The evidence for a fact, or null when there is none. */
    public @Nullable Evidence find(Fact fact) {
        return byFact.get(fact);
    }

    /** The number behind a fact, or NaN when it is not known or not a number. */
    public double number(Fact fact) {
        var found = byFact.get(fact);
        return found != null && found.value() instanceof Value.Number number
                ? number.amount()
                : Double.NaN;
    }

    /** All evidence, in the order of the facts. */
    public List<Evidence> all() {
        return List.copyOf(byFact.values());
    }
}
