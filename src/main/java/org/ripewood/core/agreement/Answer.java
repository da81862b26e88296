package org.ripewood.core.agreement;

import java.util.List;
import java.util.Optional;

/** A measure of agreement, or why there is none; never a number that is no number. */
public sealed interface Answer<T> {

    /**
     * A measure.
     *
     * @param remarks what the reader should know before trusting it; none stands in the way
     */
    record Available<T>(T value, List<String> remarks) implements Answer<T> {
        public Available {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Not available.
     *
     * @param because the rest of the sentence "Not available, because …", with what was found and,
     *     where a guess is possible, a "Maybe"
     */
    record NotAvailable<T>(String because) implements Answer<T> {
        /**
         * @throws IllegalArgumentException without a reason
         */
        public NotAvailable {
            if (because.isBlank()) {
                throw new IllegalArgumentException("a reason is needed");
            }
        }
    }

    /** The measure, when there is one. */
    default Optional<T> find() {
        return this instanceof Available<T> there ? Optional.of(there.value()) : Optional.empty();
    }
}
