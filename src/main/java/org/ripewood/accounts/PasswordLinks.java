package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.accounts.PasswordLink.Kind;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Deed;
import org.ripewood.passwords.Passwords;
import org.ripewood.passwords.Secret;
import org.ripewood.people.Person;
import org.ripewood.people.PersonEntity;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.ClientNetwork;
import org.ripewood.signin.SignInPause;
import org.ripewood.signin.TooManyTries;

/**
 * Links by which a person chooses their own password, at their start or when it is lost. A
 * registrar makes them and hands them over, so that nobody but the owner ever knows a password.
 *
 * <p>A link works once and for a while; a newer one ends the older. What is unknown, used or too
 * old is answered alike.
 */
@ApplicationScoped
@Transactional
public class PasswordLinks {

    private final PasswordLinkRows links;
    private final PasswordWishRows wishes;
    private final PersonRows persons;
    private final PersonRegistration register;
    private final SessionRevocation endings;
    private final SignInPause pause;
    private final ClientNetwork network;
    private final Audit audit;
    private final Today today;

    PasswordLinks(
            PasswordLinkRows links,
            PasswordWishRows wishes,
            PersonRows persons,
            PersonRegistration register,
            SessionRevocation endings,
            SignInPause pause,
            ClientNetwork network,
            Audit audit,
            Today today) {
        this.audit = audit;
        this.links = links;
        this.wishes = wishes;
        this.persons = persons;
        this.register = register;
        this.endings = endings;
        this.pause = pause;
        this.network = network;
        this.today = today;
    }

    /** Enters a person and makes the link by which they choose a password; registrars only. */
    public PasswordLink invite(Actor actor, NewGuest guest) {
        actor.require(Role.REGISTRAR, "invite persons");
        return made(register.invite(guest), Kind.INVITATION);
    }

    /**
     * Makes a person another link: an invitation while they have not used theirs, else one to
     * replace a lost password. The password of now holds until the link is used. Registrars only.
     */
    public PasswordLink make(Actor actor, long personId) {
        actor.require(Role.REGISTRAR, "make links to choose a password");
        var person = persons.require(personId);
        if (!person.active) {
            throw Refused.conflict(
                    "%s may not sign in.".formatted(person.name), "Maybe let them sign in first.");
        }
        var old = links.findByIdOptional(personId);
        return made(person, old.map(link -> link.kind).orElse(Kind.RESET));
    }

    private PasswordLink made(PersonEntity person, Kind kind) {
        var link =
                links.findByIdOptional(person.id)
                        .orElseGet(
                                () -> {
                                    var first = new PasswordLinkEntity();
                                    first.personId = person.id;
                                    return first;
                                });
        var secret = Secret.fresh();
        link.tokenHash = Secret.hash(secret);
        link.kind = kind;
        link.expiresAt = today.now().plus(kind.holds);
        links.persistAndFlush(link);
        wishes.deleteById(person.id);
        audit.note(Deed.LINK_MADE, null);
        return new PasswordLink(person.toRecord(), kind, secret, link.expiresAt);
    }

    /**
     * Whose password a link sets, without using it up.
     *
     * @throws Refused 404 when it is none, or none any more
     */
    public Person get(String secret) {
        return links.bySecret(secret, today.now())
                .map(link -> persons.require(link.personId))
                .filter(person -> person.active)
                .map(PersonEntity::toRecord)
                .orElseThrow(PasswordLinks::noLink);
    }

    /**
     * Sets the password the owner chose, uses the link up and ends the owner's sessions.
     *
     * @throws Refused 404 when it is no link, or none any more; 400 for a password that cannot be
     *     taken, after which the link still works
     */
    public Person use(String secret, String newPassword) {
        var link = links.bySecretForUse(secret, today.now()).orElseThrow(PasswordLinks::noLink);
        var person = persons.require(link.personId);
        if (!person.active) {
            throw noLink();
        }
        person.passwordHash =
                Passwords.chosen("newPassword", newPassword, person.name, person.login);
        wishes.deleteById(person.id);
        endings.lostPassword(person.id);
        audit.note(Deed.LINK_USED, person.id);
        return person.toRecord();
    }

    /**
     * Lays the wish for a link before the registrars. Nothing tells whether there is such a person,
     * and it is noted once however often it is asked. Asking is counted by name and network, of
     * names that nobody has as well.
     *
     * @throws Refused 429 when it was asked too often
     */
    public void wish(String login) {
        var tried = SignInPause.Try.ofWish(PersonRows.normal(login), network.ofRequest());
        pause.begin(tried).ifPresent(until -> hold(Duration.between(today.now(), until)));
        persons.byLogin(login)
                .filter(person -> person.active)
                .filter(person -> wishes.findByIdOptional(person.id).isEmpty())
                .ifPresent(
                        person -> {
                            var wish = new PasswordWishEntity();
                            wish.personId = person.id;
                            wish.wishedAt = today.now();
                            wishes.persist(wish);
                        });
    }

    private static void hold(Duration pause) {
        throw TooManyTries.of(
                "wishes for that name, or from the network you are in",
                pause,
                "Maybe ask a registrar of the school directly.");
    }

    /** Who asked for a link, by name; registrars only. */
    public List<Person> wishing(Actor actor) {
        actor.require(Role.REGISTRAR, "see who asked for a link");
        return persons
                .list("id in (select w.personId from PasswordWishEntity w) order by name, id")
                .stream()
                .map(PersonEntity::toRecord)
                .toList();
    }

    /** Those of the persons who have not used their invitation yet. */
    public Set<Long> invited(Collection<Long> personIds) {
        return personIds.isEmpty()
                ? Set.of()
                : links.list("kind = ?1 and personId in ?2", Kind.INVITATION, personIds).stream()
                        .map(link -> link.personId)
                        .collect(Collectors.toSet());
    }

    private static Refused noLink() {
        return new Refused(
                new Problem(
                        404,
                        "link-ended",
                        "This link opens nothing",
                        "It was used already, or is too old, or a newer one was made.",
                        "Maybe copy it once more, whole; if it stays, ask a registrar of the school"
                                + " for another.",
                        List.of()));
    }
}
