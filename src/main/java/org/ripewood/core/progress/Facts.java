package org.ripewood.core.progress;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The weightiest evidence for each fact of one tree; facts nobody has looked at are absent. */
public final class Facts {

    /** Evidence with what every criterion on the fact asks of it laid out: value, and day. */
    record Seen(Evidence evidence, Value value, long epochDay) {
        Seen(Evidence evidence) {
            this(evidence, evidence.value(), evidence.observedOn().toEpochDay());
        }
    }

    private final Map<Fact, Seen> byFact;

    private Facts(Map<Fact, Seen> byFact) {
        this.byFact = byFact;
    }

    /** Keeps the weightiest evidence of each fact, in whatever order it comes. */
    public static Facts of(Iterable<Evidence> evidence) {
        var byFact = new EnumMap<Fact, Seen>(Fact.class);
        for (var found : evidence) {
            byFact.merge(found.fact(), new Seen(found), Facts::weightier);
        }
        return new Facts(byFact);
    }

    private static Seen weightier(Seen known, Seen found) {
        return Evidence.BY_WEIGHT.compare(known.evidence(), found.evidence()) < 0 ? found : known;
    }

    /** The evidence for a fact, or null when there is none. */
    public @Nullable Evidence find(Fact fact) {
        var seen = byFact.get(fact);
        return seen == null ? null : seen.evidence();
    }

    /** The evidence for a fact with its day, or null when there is none. */
    @Nullable Seen seen(Fact fact) {
        return byFact.get(fact);
    }

    /** The number behind a fact, or NaN when it is not known or not a number. */
    public double number(Fact fact) {
        var found = find(fact);
        return found != null && found.value() instanceof Value.Number number
                ? number.amount()
                : Double.NaN;
    }

    /** All evidence, in the order of the facts. */
    public List<Evidence> all() {
        return byFact.values().stream().map(Seen::evidence).toList();
    }
}
