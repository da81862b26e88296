package org.ripewood.signin;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.ripewood.passwords.Passwords;
import org.ripewood.people.Person;
import org.ripewood.people.PersonRows;

/** What sign-in needs to know of a person. */
@ApplicationScoped
class Accounts {

    /** A person with what they sign in by. Never shown to anybody. */
    record Account(Person person, String passwordHash) {}

    private final PersonRows persons;

    Accounts(PersonRows persons) {
        this.persons = persons;
    }

    @Transactional
    Optional<Account> find(String login) {
        return persons.byLogin(login)
                .map(person -> new Account(person.toRecord(), person.passwordHash));
    }

    @Transactional
    Account get(long personId) {
        var person = persons.require(personId);
        return new Account(person.toRecord(), person.passwordHash);
    }

    /**
     * Keeps the password that was just found right in the way of today. It is the same password, so
     * the person's version stays, and nothing happens when another was chosen meanwhile.
     */
    @Transactional
    void renewHash(Account account, String password) {
        if (Passwords.isOld(account.passwordHash())) {
            persons.update(
                    "passwordHash = ?1 where id = ?2 and passwordHash = ?3",
                    Passwords.hash(password),
                    account.person().id(),
                    account.passwordHash());
        }
    }
}
