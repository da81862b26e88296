package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.ripewood.passwords.Secret;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;

/**
 * Private links by which a calendar program, which cannot sign in, reads a person's dates.
 *
 * <p>The {@link Secret} in a link is told once.
 */
@ApplicationScoped
@Transactional
public class CalendarLinks {

    private final CalendarLinkRows rows;
    private final PersonRows persons;
    private final Today today;

    CalendarLinks(CalendarLinkRows rows, PersonRows persons, Today today) {
        this.rows = rows;
        this.persons = persons;
        this.today = today;
    }

    /** When the actor's link was made; empty when they have none. */
    public Optional<Instant> madeAt(Actor actor) {
        return rows.findByIdOptional(actor.personId()).map(link -> link.madeAt);
    }

    /** Makes the actor a link, in place of the one they have; its secret is told here only. */
    public String make(Actor actor) {
        var link =
                rows.findByIdOptional(actor.personId())
                        .orElseGet(
                                () -> {
                                    var first = new CalendarLinkEntity();
                                    first.personId = actor.personId();
                                    first.seed = UUID.randomUUID().toString();
                                    rows.persist(first);
                                    return first;
                                });
        var secret = Secret.fresh();
        link.tokenHash = Secret.hash(secret);
        link.madeAt = today.now();
        rows.flush();
        return secret;
    }

    /** Ends the actor's link. */
    public void revoke(Actor actor) {
        rows.findByIdOptional(actor.personId())
                .ifPresent(
                        link -> {
                            link.tokenHash = null;
                            link.madeAt = null;
                        });
    }

    /** Whose calendar a secret opens; nobody's when it was revoked or they are not active. */
    public Optional<CalendarOwner> findBySecret(String secret) {
        return rows.find("tokenHash", Secret.hash(secret))
                .firstResultOptional()
                .map(
                        link ->
                                new CalendarOwner(
                                        persons.require(link.personId).toRecord(), link.seed))
                .filter(owner -> owner.person().active());
    }
}
