package org.ripewood.core.progress;

import java.time.LocalDate;
import java.util.Comparator;

/**
 * What is known of one fact of a tree, since when and from whom.
 *
 * @param by who saw it, as shown to readers; for derived facts what they were derived from
 * @param entry position in the tree's record; of two entries equal in day and source the later one
 *     counts, so that the order in which evidence is handed over never matters
 */
public record Evidence(
        Fact fact, Value value, LocalDate observedOn, Source source, String by, long entry) {

    /** The later day counts; on one day the weightier source; then the later entry. */
    static final Comparator<Evidence> BY_WEIGHT =
            Comparator.comparing(Evidence::observedOn)
                    .thenComparing(Evidence::source)
                    .thenComparingLong(Evidence::entry);

    public Evidence {
        var refusal = fact.refusalOf(value);
        if (refusal != null) {
            throw new IllegalArgumentException(fact.code() + ": " + refusal);
        }
    }

    /** Evidence the service worked out itself, as of a day. */
    public static Evidence derived(Fact fact, Value value, LocalDate asOf, String from) {
        return new Evidence(fact, value, asOf, Source.DERIVED, from, 0);
    }
}
