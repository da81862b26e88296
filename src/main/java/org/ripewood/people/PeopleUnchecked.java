package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import org.ripewood.platform.Role;

/** What rooms ask of people whom they have already checked; doors never call it. */
@ApplicationScoped
@Transactional
public class PeopleUnchecked {

    private final PersonRows persons;

    PeopleUnchecked(PersonRows persons) {
        this.persons = persons;
    }

    /** A person by id; 404 when there is none. */
    public Person get(long personId) {
        return persons.require(personId).toRecord();
    }

    /** A person by the name they sign in with. */
    public Optional<Person> findByLogin(String login) {
        return persons.byLogin(login).map(PersonEntity::toRecord);
    }

    /** Members of a course in that role, by name. */
    public List<Person> members(long courseId, Role as) {
        return persons.membersOf(courseId, as).stream().map(PersonEntity::toRecord).toList();
    }
}
