package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.Confirmations;

/** Changes of one's own password. */
@ApplicationScoped
public class PasswordChange {

    private final Confirmations confirmations;
    private final PersonRegistration register;

    PasswordChange(Confirmations confirmations, PersonRegistration register) {
        this.confirmations = confirmations;
        this.register = register;
    }

    /**
     * Changes the actor's own password and ends their other sessions. That a password was wrong is
     * kept although the change is refused, so each has a transaction of its own.
     *
     * @param session the one that goes on; null ends all
     * @throws Refused 400 for a wrong old password or a new one that cannot be taken, 429 after too
     *     many wrong ones
     */
    public void change(
            Actor actor, @Nullable Long session, String oldPassword, String newPassword) {
        confirmations.password(actor, session, "oldPassword", oldPassword);
        register.changePassword(actor, session, newPassword);
    }
}
