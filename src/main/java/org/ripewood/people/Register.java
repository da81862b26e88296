package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.EnumSet;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Refused;
import org.ripewood.platform.Role;

/** Enters persons and changes what is said of them. Called within the façade's transaction. */
@ApplicationScoped
class Register {

    private final Persons persons;
    private final SetUpCode setUpCode;

    Register(Persons persons, SetUpCode setUpCode) {
        this.persons = persons;
        this.setUpCode = setUpCode;
    }

    PersonEntity setUp(String code, NewPerson first) {
        if (persons.count() > 0) {
            throw Refused.conflict("The school is set up already.", "Maybe sign in instead.");
        }
        if (!setUpCode.is(code)) {
            throw Refused.invalid("code", "expected the code in the service's log, found another");
        }
        var entered = enter(first);
        entered.roles.add(Role.REGISTRAR);
        return entered;
    }

    PersonEntity enter(NewPerson person) {
        if (persons.byLogin(person.login()).isPresent()) {
            throw Refused.invalid(
                    "login",
                    "expected a login that nobody has yet, found \"%s\"".formatted(person.login()));
        }
        var entity = new PersonEntity();
        entity.name = person.name().strip();
        entity.login = Persons.normal(person.login());
        entity.passwordHash = Passwords.hash("password", person.password());
        entity.active = true;
        entity.roles = EnumSet.copyOf(person.roles());
        persons.persistAndFlush(entity);
        return entity;
    }

    PersonEntity setActive(Actor actor, long personId, long version, boolean active) {
        var person = persons.require(personId);
        if (person.version != version) {
            throw Refused.stale("person");
        }
        if (!active && actor.personId() == personId) {
            throw Refused.conflict(
                    "You cannot shut yourself out.", "Maybe another registrar can do it.");
        }
        person.active = active;
        persons.flush();
        return person;
    }

    void changePassword(Actor actor, String old, String fresh) {
        var person = persons.require(actor.personId());
        if (!Passwords.matches(person.passwordHash, old)) {
            throw Refused.invalid("oldPassword", "expected your password of now, found another");
        }
        if (fresh.length() < NewPerson.LEAST_PASSWORD) {
            throw Refused.invalid(
                    "newPassword",
                    "expected at least %d characters, found %d"
                            .formatted(NewPerson.LEAST_PASSWORD, fresh.length()));
        }
        person.passwordHash = Passwords.hash("newPassword", fresh);
    }
}
