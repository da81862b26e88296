package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;

/**
 * Private links by which a calendar program, which cannot sign in, reads a person's dates.
 *
 * <p>The secret in a link is 256 random bits and is told once. Only its hash is kept: a plain one
 * serves, since nobody can guess so long a secret the way passwords are guessed.
 */
@ApplicationScoped
@Transactional
public class CalendarLinks {

    private static final int SECRET_BYTES = 32;

    private final CalendarLinkRows rows;
    private final Persons persons;
    private final Today today;
    private final SecureRandom random = new SecureRandom();

    CalendarLinks(CalendarLinkRows rows, Persons persons, Today today) {
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
        var bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        var secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        link.tokenHash = hash(secret);
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
        return rows.find("tokenHash", hash(secret))
                .firstResultOptional()
                .map(
                        link ->
                                new CalendarOwner(
                                        persons.require(link.personId).toRecord(), link.seed))
                .filter(owner -> owner.person().active());
    }

    private static String hash(String secret) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
