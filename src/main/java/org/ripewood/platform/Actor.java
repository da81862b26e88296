package org.ripewood.platform;

import java.util.Set;
import org.ripewood.platform.problems.Refused;

/** Who asks. Every façade method that reads or writes somebody's record takes one. */
public record Actor(long personId, Set<Role> roles) {

    public Actor {
        roles = Set.copyOf(roles);
    }

    public boolean is(Role role) {
        return roles.contains(role);
    }

    /**
     * Goes on only for a role.
     *
     * @throws Refused 403 otherwise
     */
    public void require(Role role, String toDoWhat) {
        if (!is(role)) {
            throw Refused.forbidden(
                    "Only a %s may %s."
                            .formatted(role.name().toLowerCase(java.util.Locale.ROOT), toDoWhat));
        }
    }
}
