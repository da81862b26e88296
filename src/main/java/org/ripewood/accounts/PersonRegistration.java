package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.EnumSet;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.passwords.Passwords;
import org.ripewood.people.NewPerson;
import org.ripewood.people.Person;
import org.ripewood.people.PersonEntity;
import org.ripewood.people.PersonRows;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** Enters persons and changes what is said of them. */
@ApplicationScoped
@Transactional
public class PersonRegistration {

    private final PersonRows persons;
    private final SetUpCode setUpCode;
    private final Audit audit;
    private final SessionRevocation endings;
    private final LastRegistrar lastRegistrar;
    private final Samples samples;

    PersonRegistration(
            PersonRows persons,
            Samples samples,
            SetUpCode setUpCode,
            SessionRevocation endings,
            LastRegistrar lastRegistrar,
            Audit audit) {
        this.lastRegistrar = lastRegistrar;
        this.audit = audit;
        this.persons = persons;
        this.samples = samples;
        this.endings = endings;
        this.setUpCode = setUpCode;
    }

    /**
     * Enters the first registrar; refused unless the school is empty and the code is the one from
     * the log.
     */
    public Person setUp(String code, NewPerson first) {
        if (persons.count() > 0) {
            throw Refused.conflict("The school is set up already.", "Maybe sign in instead.");
        }
        if (!setUpCode.is(code)) {
            throw Refused.invalid("code", "expected the code in the service's log, found another");
        }
        var entered = entered(first);
        entered.roles.add(Role.REGISTRAR);
        return entered.toRecord();
    }

    /** Whether nobody is entered yet. */
    public boolean schoolIsEmpty() {
        return persons.count() == 0;
    }

    /** Enters a person; registrars only. */
    public Person enter(Actor actor, NewPerson person) {
        actor.require(Role.REGISTRAR, "enter persons");
        return entered(person).toRecord();
    }

    /** Enters a person who chooses a password once they are invited; registrars only. */
    public Person enterGuest(Actor actor, NewGuest guest) {
        actor.require(Role.REGISTRAR, "enter persons");
        return invite(guest).toRecord();
    }

    /**
     * Enters somebody made up, as whom nobody can sign in; registrars only. Where the login is
     * taken already they get the next free one of its kind.
     */
    public Person enterMadeUp(Actor actor, NewGuest madeUp) {
        actor.require(Role.REGISTRAR, "enter persons");
        var login = madeUp.login();
        for (int next = 2; persons.byLogin(login).isPresent(); next++) {
            login = madeUp.login() + "-" + next;
        }
        return invite(new NewGuest(madeUp.name(), login, madeUp.roles())).toRecord();
    }

    private PersonEntity entered(NewPerson person) {
        var hash = Passwords.chosen("password", person.password(), person.name(), person.login());
        return enter(new NewGuest(person.name(), person.login(), person.roles()), hash);
    }

    /** Enters somebody who is to choose their own password; until then none is theirs. */
    PersonEntity invite(NewGuest guest) {
        return enter(guest, Passwords.nobodyKnows());
    }

    private PersonEntity enter(NewGuest guest, String passwordHash) {
        if (persons.byLogin(guest.login()).isPresent()) {
            throw Refused.invalid(
                    "login",
                    "expected a login that nobody has yet, found \"%s\"".formatted(guest.login()));
        }
        var entity = new PersonEntity();
        entity.name = guest.name().strip();
        entity.login = PersonRows.normal(guest.login());
        entity.passwordHash = passwordHash;
        entity.active = true;
        entity.roles = EnumSet.copyOf(guest.roles());
        persons.persistAndFlush(entity);
        return entity;
    }

    /**
     * Lets a person sign in or no longer, which ends their sessions; registrars only, and never for
     * themselves.
     */
    public Person setActive(Actor actor, long personId, long version, boolean active) {
        actor.require(Role.REGISTRAR, "say who may sign in");
        var person = persons.require(personId);
        if (person.version != version) {
            throw Refused.stale("person");
        }
        if (active && samples.isMadeUp(personId)) {
            throw Refused.conflict(
                    "%s is made up for the sample course; nobody signs in as them."
                            .formatted(person.name),
                    "Maybe invite a person of the school instead.");
        }
        if (!active && actor.personId() == personId) {
            throw Refused.conflict(
                    "You cannot shut yourself out.", "Maybe another registrar can do it.");
        }
        if (!active && person.active && person.roles.contains(Role.REGISTRAR)) {
            lastRegistrar.requireAnother(personId, person.name);
        }
        person.active = active;
        if (!active) {
            endings.shutOut(personId);
        }
        persons.flush();
        return person.toRecord();
    }

    /**
     * Takes a new password, once {@link PasswordChange} has asked for the old one, and ends the
     * person's other sessions.
     */
    void changePassword(Actor actor, @Nullable Long session, String fresh) {
        var person = persons.require(actor.personId());
        person.passwordHash = Passwords.chosen("newPassword", fresh, person.name, person.login);
        endings.newPassword(person.id, session);
        audit.note(Deed.PASSWORD_CHANGED, null);
    }
}
