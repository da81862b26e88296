package org.ripewood.signin;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.people.Person;
import org.ripewood.secondfactor.SecondFactors;

/** Signs in whoever has just chosen their password here, without asking for it once more. */
@ApplicationScoped
public class DirectSignIn {

    private final SessionOpening opening;
    private final SecondFactors secondFactors;
    private final SessionCookie cookie;
    private final CurrentVertxRequest request;

    DirectSignIn(
            SessionOpening opening,
            SecondFactors secondFactors,
            SessionCookie cookie,
            CurrentVertxRequest request) {
        this.opening = opening;
        this.secondFactors = secondFactors;
        this.cookie = cookie;
        this.request = request;
    }

    /**
     * Opens a session in the browser asking.
     *
     * @return whether it did: whoever has a second factor signs in by both, since a link to choose
     *     a password must not stand for the second
     */
    public boolean open(Person person) {
        if (secondFactors.isOn(person.id())) {
            return false;
        }
        var context = request.getCurrent();
        cookie.write(context, opening.open(person, context).secret());
        return true;
    }
}
