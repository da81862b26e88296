package org.ripewood.people;

import java.util.Set;
import org.ripewood.platform.Role;

/** Of whom the school wants a second factor. */
public enum SecondFactorFor {
    NONE(Set.of()),
    REGISTRARS(Set.of(Role.REGISTRAR)),
    INSTRUCTORS(Set.of(Role.REGISTRAR, Role.INSTRUCTOR)),
    EVERYBODY(Set.of(Role.values()));

    private final Set<Role> roles;

    SecondFactorFor(Set<Role> roles) {
        this.roles = roles;
    }

    boolean includes(Person person) {
        return person.roles().stream().anyMatch(roles::contains);
    }
}
