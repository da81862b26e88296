package org.ripewood.core.supply;

import java.util.List;
import java.util.Optional;

/** What came out of a reckoning: a value, or all the reasons why there is none. */
public sealed interface Reckoned<T> {

    /**
     * A value.
     *
     * @param remarks what the reader should know or look at again; none of it stands in the way
     */
    record Found<T>(T value, List<String> remarks) implements Reckoned<T> {
        public Found {
            remarks = List.copyOf(remarks);
        }
    }

    /** No value. */
    record Refused<T>(List<Refusal> refusals) implements Reckoned<T> {
        /**
         * @throws IllegalArgumentException without any reason
         */
        public Refused {
            if (refusals.isEmpty()) {
                throw new IllegalArgumentException("a refusal has at least one reason");
            }
            refusals = List.copyOf(refusals);
        }
    }

    static <T> Reckoned<T> found(T value) {
        return new Found<>(value, List.of());
    }

    /** What the reader should know; nothing where there is no value. */
    default List<String> remarks() {
        return List.of();
    }

    /** Why there is no value; nothing where there is one. */
    default List<Refusal> refusals() {
        return List.of();
    }

    /** The value, when there is one. */
    default Optional<T> find() {
        return this instanceof Found<T> found ? Optional.of(found.value()) : Optional.empty();
    }
}
