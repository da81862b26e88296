package org.ripewood.platform;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.FormAuthenticationMechanism;
import jakarta.enterprise.context.RequestScoped;
import java.util.EnumSet;
import org.jspecify.annotations.Nullable;

/** Who is signed in on this request. */
@RequestScoped
public class CurrentUser {

    /** Attribute of the identity that holds the person's id. */
    public static final String PERSON_ID = "personId";

    /** Attribute of the identity that holds the session's id; absent without a session. */
    public static final String SESSION_ID = "sessionId";

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

    /** The session this request belongs to; null when it came without one. */
    public @Nullable Long session() {
        return identity.getAttribute(SESSION_ID);
    }

    /** Takes the session's cookie from this browser. */
    public void signOut() {
        if (signedIn()) {
            FormAuthenticationMechanism.logout(identity);
        }
    }
}
