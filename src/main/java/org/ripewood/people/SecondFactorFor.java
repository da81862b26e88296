package org.ripewood.people;

import java.util.Set;
import org.ripewood.platform.Role;

/** Of whom the school wants a second factor. */
public enum SecondFactorFor {
    NONE,
    REGISTRARS,
    INSTRUCTORS,
    EVERYBODY;

    boolean includes(Person person) {
        return person.roles().stream().anyMatch(roles()::contains);
    }

    private Set<Role> roles() {
        return switch (this) {
            case NONE -> Set.of();
            case REGISTRARS -> Set.of(Role.REGISTRAR);
            case INSTRUCTORS -> Set.of(Role.REGISTRAR, Role.INSTRUCTOR);
            case EVERYBODY -> Set.of(Role.values());
        };
    }
}
