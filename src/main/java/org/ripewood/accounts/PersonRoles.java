package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.people.Course;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.people.PersonEntity;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * Gives roles to people and takes them. A session or token of theirs has the roles of now from its
 * next request on.
 */
@ApplicationScoped
@Transactional
public class PersonRoles {

    private final PersonRows persons;
    private final PeopleUnchecked people;
    private final LastRegistrar lastRegistrar;
    private final Audit audit;
    private final Today today;

    PersonRoles(
            PersonRows persons,
            PeopleUnchecked people,
            LastRegistrar lastRegistrar,
            Audit audit,
            Today today) {
        this.persons = persons;
        this.people = people;
        this.lastRegistrar = lastRegistrar;
        this.audit = audit;
        this.today = today;
    }

    /** A person and their roles; registrars only, 404 when there is none. */
    public Person get(Actor actor, long personId) {
        actor.require(Role.REGISTRAR, "see the roles of others");
        return persons.require(personId).toRecord();
    }

    /**
     * Lets a person be just that at the school; registrars only.
     *
     * @throws Refused 409 when they still teach or attend a course in a role that is taken, when
     *     they are the last registrar who can sign in, or when they were forgotten; 412 when
     *     somebody changed them since
     */
    public Person set(Actor actor, long personId, long version, Set<Role> roles) {
        actor.require(Role.REGISTRAR, "give and take roles");
        var person = persons.require(personId);
        if (person.version != version) {
            throw Refused.stale("person");
        }
        if (roles.isEmpty()) {
            throw Refused.invalid("roles", "expected one role at least, found none");
        }
        if (person.roles.isEmpty()) {
            throw Refused.conflict(
                    "%s has no place at the school any more.".formatted(person.name),
                    "Maybe invite them anew.");
        }
        if (!person.roles.equals(roles)) {
            change(person, roles);
        }
        return person.toRecord();
    }

    private void change(PersonEntity person, Set<Role> roles) {
        requireFree(person, roles, Role.INSTRUCTOR, "teaches");
        requireFree(person, roles, Role.STUDENT, "attends");
        if (isTaken(person, roles, Role.REGISTRAR)) {
            lastRegistrar.requireAnother(person.id, person.name);
        }
        person.roles.retainAll(roles);
        person.roles.addAll(roles);
        persons.flush();
        audit.note(Deed.ROLES_CHANGED, null);
    }

    private static boolean isTaken(PersonEntity person, Set<Role> roles, Role role) {
        return person.roles.contains(role) && !roles.contains(role);
    }

    private void requireFree(PersonEntity person, Set<Role> roles, Role role, String does) {
        if (!isTaken(person, roles, role)) {
            return;
        }
        var courses = people.coursesNotOver(person.id, role, today.date());
        if (!courses.isEmpty()) {
            throw Refused.conflict(
                    "%s still %s %s."
                            .formatted(
                                    person.name,
                                    does,
                                    courses.stream()
                                            .map(Course::name)
                                            .collect(Collectors.joining("”, “", "“", "”"))),
                    "Maybe end the membership there first, under People and courses.");
        }
    }
}
