package org.ripewood.signin;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jspecify.annotations.Nullable;
import org.ripewood.audit.Audit;
import org.ripewood.audit.Change;
import org.ripewood.audit.Deed;
import org.ripewood.passwords.Secret;
import org.ripewood.people.Person;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * In which browsers a person is signed in. A session's cookie holds a secret that is looked up at
 * each request, so that it can be ended from anywhere; the cookie's own seal ends idle ones.
 */
@ApplicationScoped
@Transactional
public class SignIns {

    /** In place of a login, which has no such letters, when the password field holds a code. */
    public static final String CODE_NAME = "+code";

    private final SignInSessions sessions;
    private final HalfSignIns halfSignIns;
    private final PersonRows persons;
    private final Audit audit;
    private final Today today;
    private final Duration longest;

    /**
     * @param longest after so long one signs in anew, however busy one was; a week lets a phone at
     *     the bench be (NIST SP 800-63B asks for 30 days at most where a password is all there is;
     *     from memory)
     */
    SignIns(
            SignInSessions sessions,
            HalfSignIns halfSignIns,
            PersonRows persons,
            Audit audit,
            Today today,
            @ConfigProperty(name = "ripewood.session.longest", defaultValue = "P7D")
                    Duration longest) {
        this.sessions = sessions;
        this.halfSignIns = halfSignIns;
        this.persons = persons;
        this.audit = audit;
        this.today = today;
        this.longest = longest;
    }

    /** Who is signed in by a secret, and which session it is. */
    record Resumed(Person person, long sessionId) {}

    /**
     * Opens a session; its secret is told here only. Sessions grown too old are cleared away.
     *
     * @param byProgram whether a program signed in, which has the password at hand: there is no
     *     browser to be left open, and the session counts as confirmed
     */
    Opened open(long personId, boolean byProgram) {
        sessions.delete("signedInAt < ?1", oldest());
        var session = new SignInSessionEntity();
        var secret = Secret.fresh();
        session.personId = personId;
        session.secretHash = Secret.hash(secret);
        session.signedInAt = today.now();
        session.confirmedAt = byProgram ? session.signedInAt : null;
        sessions.persistAndFlush(session);
        audit.note(Deed.SIGNED_IN, personId);
        return new Opened(secret, session.id);
    }

    /** Ends the session of a secret, whosever it is: in its browser somebody signed in anew. */
    void endReplaced(String secret) {
        sessions.bySecret(secret)
                .ifPresent(
                        session -> {
                            sessions.delete(session);
                            audit.note(Deed.SIGNED_OUT, session.personId);
                        });
    }

    record Opened(String secret, long sessionId) {}

    /** The person is read afresh, so that what a registrar takes away is gone at once. */
    Optional<Resumed> find(String secret) {
        return sessions.ownedBySecret(secret)
                .filter(owned -> owned.session().signedInAt.isAfter(oldest()))
                .filter(owned -> owned.person().active())
                .map(owned -> new Resumed(owned.person(), owned.session().id));
    }

    /** Where the actor is signed in, browser by browser, the latest first. */
    public List<SignedIn> of(Actor actor) {
        return sessions.of(actor.personId()).stream()
                .filter(session -> session.signedInAt.isAfter(oldest()))
                .map(session -> new SignedIn(session.id, session.signedInAt))
                .toList();
    }

    /** Whether the session was confirmed since a moment. */
    boolean isConfirmed(long sessionId, Instant since) {
        return sessions.findByIdOptional(sessionId)
                .map(session -> session.confirmedAt)
                .filter(moment -> moment.isAfter(since))
                .isPresent();
    }

    /** Lets a confirmation hold on from now, as a program's does while it is at work. */
    void holdOn(long sessionId) {
        sessions.findByIdOptional(sessionId)
                .ifPresent(session -> session.confirmedAt = today.now());
    }

    /** Notes that a session is its owner's, and gives it another secret, told here only. */
    String confirm(long sessionId) {
        var session = sessions.findById(sessionId);
        var secret = Secret.fresh();
        session.secretHash = Secret.hash(secret);
        session.confirmedAt = today.now();
        return secret;
    }

    /** Ends one of the actor's sessions; 404 when they have no such one. */
    public void endOne(Actor actor, long sessionId) {
        if (sessions.delete("id = ?1 and personId = ?2", sessionId, actor.personId()) == 0) {
            throw Refused.notFound("session", sessionId);
        }
        audit.note(Deed.SIGNED_OUT, actor.personId());
    }

    /** Ends the session the actor came by; null ends nothing. */
    public void end(Actor actor, @Nullable Long sessionId) {
        if (sessionId != null) {
            sessions.delete("id = ?1 and personId = ?2", sessionId, actor.personId());
            audit.note(Deed.SIGNED_OUT, actor.personId());
        }
    }

    /** Ends every session of the actor's, this one as well. */
    public void endEverywhere(Actor actor) {
        sessions.endAll(actor.personId(), null);
        audit.note(Deed.SIGNED_OUT_EVERYWHERE, actor.personId());
    }

    /**
     * Ends every session of a person, who may sign in again; registrars only.
     *
     * @param spared the one the registrar came by, when it is their own they end; null spares none
     */
    public void endAllOf(Actor actor, long personId, @Nullable Long spared) {
        actor.require(Role.REGISTRAR, "end the sessions of others");
        persons.require(personId);
        sessions.endAll(personId, spared);
        audit.note(Deed.SESSIONS_ENDED, null);
        audit.noteRow("person", Change.Kind.CHANGED, personId);
    }

    /** Ends the sessions of everybody but the one the registrar came by; registrars only. */
    public void endEverybodys(Actor actor, @Nullable Long spared) {
        actor.require(Role.REGISTRAR, "end the sessions of others");
        sessions.delete("id <> ?1", spared == null ? -1L : spared);
        halfSignIns.deleteAll();
        audit.note(Deed.EVERY_SESSION_ENDED, null);
    }

    private Instant oldest() {
        return today.now().minus(longest);
    }
}
