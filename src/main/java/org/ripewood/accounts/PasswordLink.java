package org.ripewood.accounts;

import java.time.Duration;
import java.time.Instant;
import org.ripewood.people.Person;

/**
 * A link by which a person may choose a password, told once to the registrar who made it.
 *
 * @param secret last part of its address
 */
public record PasswordLink(Person person, Kind kind, String secret, Instant expiresAt) {

    /** Why it was made, which says how long it holds. */
    public enum Kind {
        /**
         * A week, since people do not look at their post every day (common practice, no source).
         */
        INVITATION(Duration.ofDays(7)),
        /** A day: whoever asks for it waits for it (common practice, no source). */
        RESET(Duration.ofHours(24));

        final Duration holds;

        Kind(Duration holds) {
            this.holds = holds;
        }
    }
}
