package org.ripewood.people;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import java.util.stream.Collectors;
import org.ripewood.platform.CurrentUser;

/** A person as the one who is signed in. */
final class Identity {

    private Identity() {}

    /**
     * By a session. The framework seals the principal's name into the cookie and gives it back, so
     * it is the session's secret and not a name of the person's.
     */
    static SecurityIdentity inSession(Person person, String secret, long sessionId) {
        return of(person, secret).addAttribute(CurrentUser.SESSION_ID, sessionId).build();
    }

    /** By a token: no session, and the name is nobody's to seal anywhere. */
    static SecurityIdentity byToken(Person person, boolean writes) {
        return of(person, "").addAttribute(CurrentUser.TOKEN_WRITES, writes).build();
    }

    private static QuarkusSecurityIdentity.Builder of(Person person, String principal) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(principal))
                .addRoles(person.roles().stream().map(Enum::name).collect(Collectors.toSet()))
                .addAttribute(CurrentUser.PERSON_ID, person.id());
    }

    static SecurityIdentity nobody() {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(""))
                .setAnonymous(true)
                .build();
    }
}
