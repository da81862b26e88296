package org.ripewood.api.school;

import java.util.List;
import org.ripewood.people.Person;
import org.ripewood.platform.Role;

/** A person; roles in their usual order. */
record PersonAnswer(
        long id, long version, String name, String login, List<Role> roles, boolean active) {

    static PersonAnswer of(Person person) {
        return new PersonAnswer(
                person.id(),
                person.version(),
                person.name(),
                person.login(),
                person.roles().stream().sorted().toList(),
                person.active());
    }
}
