package org.ripewood.secondfactor;

import org.ripewood.people.Person;
import org.ripewood.platform.Role;

/** Of whom the school wants a second factor. */
public enum SecondFactorFor {
    NONE,
    REGISTRARS,
    /** And of registrars. */
    INSTRUCTORS,
    EVERYBODY;

    boolean includes(Person person) {
        boolean registrar = person.roles().contains(Role.REGISTRAR);
        return switch (this) {
            case NONE -> false;
            case REGISTRARS -> registrar;
            case INSTRUCTORS -> registrar || person.roles().contains(Role.INSTRUCTOR);
            case EVERYBODY -> true;
        };
    }
}
