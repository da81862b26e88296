package org.ripewood.people;

import java.util.Set;
import org.ripewood.platform.Role;

/** A person of the school. */
public record Person(
        long id, long version, String name, String login, Set<Role> roles, boolean active) {

    public Person {
        roles = Set.copyOf(roles);
    }
}
