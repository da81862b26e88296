package org.ripewood.signin;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;

/** A person as the one who is signed in. */
public final class Identity {

    private Identity() {}

    /**
     * By a session. The framework seals the principal's name into the cookie and gives it back, so
     * it is the session's secret and not a name of the person's.
     *
     * @param unfinished whether a second factor has to be set up first: until then no role is
     *     theirs
     */
    static SecurityIdentity inSession(
            Person person, String secret, long sessionId, boolean unfinished) {
        return of(person, secret, unfinished ? Set.of() : person.roles())
                .addAttribute(CurrentUser.SESSION_ID, sessionId)
                .addAttribute(CurrentUser.UNFINISHED, unfinished)
                .build();
    }

    /** By a token: no session, and the name is nobody's to seal anywhere. */
    public static SecurityIdentity byToken(Person person, boolean writes) {
        return of(person, "", person.roles())
                .addAttribute(CurrentUser.TOKEN_WRITES, writes)
                .build();
    }

    private static QuarkusSecurityIdentity.Builder of(
            Person person, String principal, Set<Role> roles) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(principal))
                .addRoles(roles.stream().map(Enum::name).collect(Collectors.toSet()))
                .addAttribute(CurrentUser.PERSON_ID, person.id())
                .addAttribute(CurrentUser.NAME, person.name());
    }

    static SecurityIdentity nobody() {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(""))
                .setAnonymous(true)
                .build();
    }
}
