package org.ripewood.signin;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Secret;
import org.ripewood.platform.Today;

/**
 * The browsers a person signed in from before, each by a secret in a cookie of its own. Such a
 * secret opens nothing; it only lets tries through that a pause would hold.
 */
@ApplicationScoped
@Transactional
class KnownBrowsers {

    /** The months between two courses (our own choice). */
    static final Duration REMEMBERED = Duration.ofDays(180);

    /** More than anybody uses; the oldest go first. */
    static final int MOST = 10;

    private final KnownBrowserRows rows;
    private final Today today;

    KnownBrowsers(KnownBrowserRows rows, Today today) {
        this.rows = rows;
        this.today = today;
    }

    boolean knows(@Nullable String secret, long personId) {
        return secret != null
                && rows.count(
                                "secretHash = ?1 and personId = ?2 and knownSince > ?3",
                                Secret.hash(secret),
                                personId,
                                today.now().minus(REMEMBERED))
                        > 0;
    }

    /** The secret for the browser to keep; empty when it has one. */
    Optional<String> remember(@Nullable String secret, long personId) {
        if (knows(secret, personId)) {
            return Optional.empty();
        }
        rows.of(personId).stream().skip(MOST - 1L).forEach(rows::delete);
        var browser = new KnownBrowserEntity();
        var fresh = Secret.fresh();
        browser.personId = personId;
        browser.secretHash = Secret.hash(fresh);
        browser.knownSince = today.now();
        rows.persist(browser);
        return Optional.of(fresh);
    }
}
