package org.ripewood.signin;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Passwords;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Today;
import org.ripewood.platform.http.ProgramHeader;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.secondfactor.SecondFactors;

/**
 * Asks somebody who is signed in for their password again, before what a browser left open must not
 * be enough for. Wrong ones are held like those at sign-in: whoever found a session open guesses no
 * password by it.
 *
 * <p>Has no transaction of its own, since what is refused must be counted all the same.
 */
@ApplicationScoped
public class Confirmations {

    /** For one thing and the next (our own choice). */
    static final Duration HOLDS = Duration.ofMinutes(10);

    private final Accounts accounts;
    private final SignIns signIns;
    private final SecondFactors secondFactors;
    private final SignInPause pause;
    private final SessionCookie cookie;
    private final CurrentUser user;
    private final CurrentVertxRequest request;
    private final Today today;

    Confirmations(
            Accounts accounts,
            SignIns signIns,
            SecondFactors secondFactors,
            SignInPause pause,
            SessionCookie cookie,
            CurrentUser user,
            CurrentVertxRequest request,
            Today today) {
        this.accounts = accounts;
        this.signIns = signIns;
        this.secondFactors = secondFactors;
        this.pause = pause;
        this.cookie = cookie;
        this.user = user;
        this.request = request;
        this.today = today;
    }

    /**
     * Whether the session asking was confirmed a short while ago. A program's requests let that
     * hold on.
     */
    public boolean isConfirmed() {
        var session = user.session();
        if (session == null || !signIns.isConfirmed(session, today.now().minus(HOLDS))) {
            return false;
        }
        if (ProgramHeader.isOn(request.getCurrent())) {
            signIns.holdOn(session);
        }
        return true;
    }

    /**
     * Goes on for a session that was confirmed a short while ago.
     *
     * @throws Refused 403 otherwise
     */
    public void require() {
        if (!isConfirmed()) {
            throw new Refused(
                    new Problem(
                            403,
                            "confirm-first",
                            "Confirm that it is you",
                            "For this your password is asked again; it then holds for ten minutes.",
                            "Maybe send it to /api/v1/people/me/confirmation first.",
                            List.of()));
        }
    }

    /**
     * Confirms the session asking, which gets another cookie by it.
     *
     * @return until when it holds
     * @throws Refused 400 when it does not show that it is them, 429 after too many tries
     */
    public Instant confirm(Confirmation given) {
        var session = user.session();
        if (session == null) {
            throw Refused.forbidden("Only a session can be confirmed; sign in with your password.");
        }
        password(user.actor(), session, "password", given.password());
        if (asksForCode()) {
            code(user.actor(), session, given.code());
        }
        cookie.write(request.getCurrent(), signIns.confirm(session));
        return today.now().plus(HOLDS);
    }

    /** Whether a code of the actor's second factor is asked for as well. */
    public boolean asksForCode() {
        return secondFactors.isOn(user.actor().personId());
    }

    private void code(Actor actor, long session, @Nullable String code) {
        if (code == null || code.isBlank()) {
            throw Refused.invalid("code", "expected a code of your second factor, found nothing");
        }
        var tried = SignInPause.Try.ofCode(actor.personId(), session);
        begin(tried, "wrong codes", "Maybe ask a registrar to reset your second factor.");
        if (!secondFactors.takes(actor.personId(), code)) {
            pause.failed(tried, actor.personId());
            throw Refused.invalid(
                    "code",
                    "expected the code that your app shows now, or one of your sheet that is not"
                            + " used, found another");
        }
        pause.succeeded(tried);
    }

    private void begin(SignInPause.Try tried, String what, String maybe) {
        pause.begin(tried)
                .ifPresent(
                        until -> {
                            var rest = Duration.between(today.now(), until);
                            throw TooManyTries.of(what, rest, maybe);
                        });
    }

    /**
     * Goes on for the actor's own password only.
     *
     * @param field that tells of a wrong one
     * @throws Refused 400 for a wrong one, 429 after too many
     */
    public void password(Actor actor, @Nullable Long session, String field, String password) {
        var tried = SignInPause.Try.ofSession(actor.personId(), session);
        begin(tried, "wrong passwords", "Maybe ask a registrar for a link to choose a new one.");
        var account = accounts.get(actor.personId());
        if (!Passwords.matches(account.passwordHash(), password)) {
            pause.failed(tried, actor.personId());
            throw Refused.invalid(field, "that is not your password");
        }
        pause.succeeded(tried);
    }
}
