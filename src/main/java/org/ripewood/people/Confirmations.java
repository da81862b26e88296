package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Refused;
import org.ripewood.platform.Today;

/**
 * Asks somebody who is signed in for their password again. Wrong ones are held like those at
 * sign-in: whoever found a session open guesses no password by it.
 *
 * <p>Has no transaction of its own, since what is refused must be counted all the same.
 */
@ApplicationScoped
class Confirmations {

    private final Accounts accounts;
    private final SignInPause pause;
    private final Today today;

    Confirmations(Accounts accounts, SignInPause pause, Today today) {
        this.accounts = accounts;
        this.pause = pause;
        this.today = today;
    }

    /**
     * Goes on for the actor's own password only.
     *
     * @param field that tells of a wrong one
     * @throws Refused 400 for a wrong one, 429 after too many
     */
    void password(Actor actor, @Nullable Long session, String field, String password) {
        var tried = SignInPause.Try.ofSession(actor.personId(), session);
        var until = pause.begin(tried);
        if (until.isPresent()) {
            throw TooManyTries.of(
                    "wrong passwords",
                    Duration.between(today.now(), until.get()),
                    "Maybe ask a registrar for a link to choose a new one.");
        }
        var account = accounts.get(actor.personId());
        if (!Passwords.matches(account.passwordHash(), password)) {
            pause.failed(tried, actor.personId());
            throw Refused.invalid(field, "expected your password of now, found another");
        }
        pause.succeeded(tried);
    }
}
