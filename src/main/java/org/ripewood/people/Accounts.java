package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Optional;

/** What sign-in needs to know of a person. */
@ApplicationScoped
class Accounts {

    /** A person with what they sign in by. Never shown to anybody. */
    record Account(Person person, String passwordHash) {}

    private final Persons persons;

    Accounts(Persons persons) {
        this.persons = persons;
    }

    @Transactional
    Optional<Account> find(String login) {
        return persons.byLogin(login)
                .map(person -> new Account(person.toRecord(), person.passwordHash));
    }
}
