package org.ripewood.core.supply;

import java.util.List;

/** A quantity that is estimated, or that cannot be: then it is told what is missing, never 0. */
public sealed interface Estimate {

    /** Lies about there. */
    record Known(Span span) implements Estimate {}

    /**
     * Cannot be told.
     *
     * @param missing what somebody would have to weigh, measure or look up first
     */
    record Unknown(List<String> missing) implements Estimate {
        /**
         * @throws IllegalArgumentException when nothing is missing
         */
        public Unknown {
            if (missing.isEmpty()) {
                throw new IllegalArgumentException("what is not known misses something");
            }
            missing = List.copyOf(missing);
        }
    }
}
