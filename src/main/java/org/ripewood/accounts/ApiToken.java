package org.ripewood.accounts;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is told of a token by which a person's program uses the API.
 *
 * @param lastDay the last one it opens anything on
 * @param lastUsedOn null when it was never used
 */
public record ApiToken(
        long id,
        String name,
        Scope scope,
        Instant madeAt,
        LocalDate lastDay,
        @Nullable LocalDate lastUsedOn) {

    /** What a token may do of what its owner may. */
    public enum Scope {
        READ,
        READ_AND_WRITE
    }
}
