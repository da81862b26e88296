package org.ripewood.platform;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.FormAuthenticationMechanism;
import jakarta.enterprise.context.RequestScoped;
import java.util.EnumSet;

/** Who is signed in on this request. */
@RequestScoped
public class CurrentUser {

    /** Attribute of the identity that holds the person's id. */
    public static final String PERSON_ID = "personId";

    private final SecurityIdentity identity;

    CurrentUser(SecurityIdentity identity) {
        this.identity = identity;
    }

    public boolean signedIn() {
        return !identity.isAnonymous();
    }

    /**
     * The person asking.
     *
     * @throws UnauthorizedException when nobody is signed in
     */
    public Actor actor() {
        Long personId = identity.getAttribute(PERSON_ID);
        if (personId == null) {
            throw new UnauthorizedException("nobody is signed in");
        }
        var roles = EnumSet.noneOf(Role.class);
        identity.getRoles().forEach(name -> roles.add(Role.valueOf(name)));
        return new Actor(personId, roles);
    }

    /** Ends the session of this browser. */
    public void signOut() {
        if (signedIn()) {
            FormAuthenticationMechanism.logout(identity);
        }
    }
}
