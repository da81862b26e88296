package org.ripewood.signin;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Secret;
import org.ripewood.people.Person;
import org.ripewood.people.PersonRows;
import org.ripewood.platform.Today;

/**
 * Sign-ins that wait for a code, each known by a secret in a cookie of its own. They are kept apart
 * from sessions, so that none can be taken for one.
 */
@ApplicationScoped
@Transactional
public class HalfSignIns implements PanacheRepositoryBase<HalfSignInEntity, Long> {

    /** To fetch the phone (our own choice). */
    public static final Duration WAITS = Duration.ofMinutes(5);

    private final PersonRows persons;
    private final Today today;

    HalfSignIns(PersonRows persons, Today today) {
        this.persons = persons;
        this.today = today;
    }

    /** Its secret, told here only. Those that are too old are cleared away. */
    String begin(long personId) {
        delete("begunAt <= ?1", oldest());
        var half = new HalfSignInEntity();
        var secret = Secret.fresh();
        half.personId = personId;
        half.secretHash = Secret.hash(secret);
        half.begunAt = today.now();
        persist(half);
        return secret;
    }

    /** Whose sign-in it is; nobody's when it waited too long or they may no longer sign in. */
    Optional<Person> whose(@Nullable String secret) {
        return secret == null
                ? Optional.empty()
                : find("secretHash = ?1 and begunAt > ?2", Secret.hash(secret), oldest())
                        .firstResultOptional()
                        .map(half -> persons.require(half.personId).toRecord())
                        .filter(Person::active);
    }

    void end(String secret) {
        delete("secretHash", Secret.hash(secret));
    }

    private Instant oldest() {
        return today.now().minus(WAITS);
    }
}
