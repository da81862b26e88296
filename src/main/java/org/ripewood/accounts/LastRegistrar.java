package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** Sees that somebody is left who can enter people and give roles. */
@ApplicationScoped
class LastRegistrar {

    private static final String OF_REGISTRARS = "?1 member of p.roles and p.active = true";

    private final PersonRows persons;

    LastRegistrar(PersonRows persons) {
        this.persons = persons;
    }

    /**
     * Goes on when a registrar besides that person can sign in. Whoever was invited and has not
     * chosen a password yet is not counted. Registrars are locked until the transaction ends: of
     * two who take the role from each other at once, the second is refused.
     *
     * @throws Refused 409 otherwise
     */
    void requireAnother(long personId, String name) {
        persons.find(
                        "from PersonEntity p where " + OF_REGISTRARS + " order by p.id",
                        Role.REGISTRAR)
                .withLock(LockModeType.PESSIMISTIC_WRITE)
                .list();
        // asked after the lock and by a statement of its own, to see what the first of two wrote
        var others =
                persons.count(
                        "from PersonEntity p where "
                                + OF_REGISTRARS
                                + " and p.id <> ?2 and p.id not in (select l.personId from"
                                + " PasswordLinkEntity l where l.kind = ?3)",
                        Role.REGISTRAR,
                        personId,
                        PasswordLink.Kind.INVITATION);
        if (others == 0) {
            throw Refused.conflict(
                    "%s is the only registrar who can sign in.".formatted(name),
                    "Maybe make somebody else registrar first, and wait until they have signed in.");
        }
    }
}
