package org.ripewood.people;

import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import java.util.stream.Collectors;
import org.ripewood.platform.CurrentUser;

/** A person as the one who is signed in. */
final class Identity {

    private Identity() {}

    static SecurityIdentity of(Person person) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(person.login()))
                .addRoles(person.roles().stream().map(Enum::name).collect(Collectors.toSet()))
                .addAttribute(CurrentUser.PERSON_ID, person.id())
                .build();
    }

    static SecurityIdentity nobody() {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(""))
                .setAnonymous(true)
                .build();
    }
}
