package org.ripewood.platform;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.security.FormAuthenticationMechanism;
import io.quarkus.vertx.http.runtime.security.HttpSecurityUtils;
import jakarta.enterprise.context.RequestScoped;
import java.util.EnumSet;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;

/** Who is signed in on this request. */
@RequestScoped
public class CurrentUser {

    /** Attribute of the identity that holds the person's id. */
    public static final String PERSON_ID = "personId";

    /** Attribute of the identity that holds the person's name. */
    public static final String NAME = "name";

    /** Attribute of the identity that holds the session's id; absent without a session. */
    public static final String SESSION_ID = "sessionId";

    /** Attribute of the identity that says whether its token may write; absent without one. */
    public static final String TOKEN_WRITES = "tokenWrites";

    /** Attribute of the identity: whether it has to be made safer before it may do anything. */
    public static final String UNFINISHED = "unfinished";

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

    /** The person asking; null when nobody is signed in. */
    public @Nullable Long personId() {
        return identity.getAttribute(PERSON_ID);
    }

    /** What the person asking is called; empty when nobody is signed in. */
    public String name() {
        String name = identity.getAttribute(NAME);
        return name == null ? "" : name;
    }

    /** The session this request belongs to; null when it came without one. */
    public @Nullable Long session() {
        return identity.getAttribute(SESSION_ID);
    }

    /** Whether a second factor has to be set up before anything else. */
    public boolean unfinished() {
        return Boolean.TRUE.equals(identity.getAttribute(UNFINISHED));
    }

    /** Whether this request came by a token and not by a session. */
    public boolean byToken() {
        return identity.getAttribute(TOKEN_WRITES) != null;
    }

    /** Whether it came by a token that only reads. */
    public boolean readsOnly() {
        return Boolean.FALSE.equals(identity.getAttribute(TOKEN_WRITES));
    }

    /**
     * Goes on for a session only: a token must not make what opens more than the token itself.
     *
     * @throws Refused 403 otherwise
     */
    public void requireSession(String toDoWhat) {
        if (byToken()) {
            throw Refused.forbidden(
                    "A token may not %s; sign in with your password.".formatted(toDoWhat));
        }
    }

    /** Takes the session's cookie from this browser, and what it kept of the pages. */
    public void signOut() {
        if (signedIn()) {
            FormAuthenticationMechanism.logout(identity);
            ClearSiteData.on(HttpSecurityUtils.getRoutingContextAttribute(identity));
        }
    }
}
