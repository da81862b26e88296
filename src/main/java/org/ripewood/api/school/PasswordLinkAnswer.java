package org.ripewood.api.school;

import java.time.Instant;
import java.util.Locale;
import org.ripewood.accounts.PasswordLink;

/**
 * A link by which a person chooses a password, told this once.
 *
 * @param path below the service's address
 */
record PasswordLinkAnswer(PersonAnswer person, String kind, String path, Instant until) {

    static PasswordLinkAnswer of(PasswordLink link) {
        return new PasswordLinkAnswer(
                PersonAnswer.of(link.person()),
                link.kind().name().toLowerCase(Locale.ROOT),
                "/password/" + link.secret(),
                link.expiresAt());
    }
}
