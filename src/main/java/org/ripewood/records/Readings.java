package org.ripewood.records;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The order in which entries weigh. */
public final class Readings {

    /**
     * The later day counts; on one day the weightier source; then the later entry. The same order
     * as that of evidence, so that a wound's page and its standing never disagree.
     */
    static final Comparator<Observation> BY_WEIGHT =
            Comparator.comparing(Observation::observedOn)
                    .thenComparing(Observation::source)
                    .thenComparingLong(Observation::id);

    private Readings() {}

    public static List<Observation> oldestFirst(Stream<Observation> observations) {
        return observations.sorted(BY_WEIGHT).toList();
    }

    public static Optional<Observation> latest(Stream<Observation> observations) {
        return observations.max(BY_WEIGHT);
    }
}
