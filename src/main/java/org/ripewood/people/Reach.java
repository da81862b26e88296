package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;

/** Whose trees a person may see: their own; their students'; a registrar everybody's. */
@ApplicationScoped
public class Reach {

    private final MembershipRows memberships;

    Reach(MembershipRows memberships) {
        this.memberships = memberships;
    }

    public boolean includes(Actor actor, long personId) {
        return actor.personId() == personId
                || actor.is(Role.REGISTRAR)
                || (actor.is(Role.INSTRUCTOR) && memberships.teaches(actor.personId(), personId));
    }

    public @Nullable List<Long> of(Actor actor) {
        if (actor.is(Role.REGISTRAR)) {
            return null;
        }
        var own = Stream.of(actor.personId());
        var students =
                actor.is(Role.INSTRUCTOR)
                        ? memberships.studentsOf(actor.personId()).stream()
                        : Stream.<Long>empty();
        return Stream.concat(own, students).distinct().toList();
    }
}
