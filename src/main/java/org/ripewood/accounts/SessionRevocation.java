package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import org.jspecify.annotations.Nullable;
import org.ripewood.signin.KnownBrowserRows;
import org.ripewood.signin.SignInSessions;

/** What ends with a password or with a person's place at the school, on every node at once. */
@ApplicationScoped
class SessionRevocation {

    private final SignInSessions sessions;
    private final PasswordLinkRows links;
    private final ApiTokenRows tokens;
    private final KnownBrowserRows browsers;

    SessionRevocation(
            SignInSessions sessions,
            PasswordLinkRows links,
            ApiTokenRows tokens,
            KnownBrowserRows browsers) {
        this.browsers = browsers;
        this.sessions = sessions;
        this.links = links;
        this.tokens = tokens;
    }

    /**
     * Whoever was signed in by the old password is out; the session that changed it may go on, and
     * so may programs, which never knew it.
     */
    void newPassword(long personId, @Nullable Long sparedSession) {
        sessions.endAll(personId, sparedSession);
        links.deleteById(personId);
    }

    /** Whoever may have had the lost one is out, with their programs. */
    void lostPassword(long personId) {
        shutOut(personId);
    }

    /** Nothing opens the house to them any more, not even after they are let in again. */
    void shutOut(long personId) {
        sessions.endAll(personId, null);
        tokens.endAll(personId);
        browsers.forgetAll(personId);
        links.deleteById(personId);
    }
}
