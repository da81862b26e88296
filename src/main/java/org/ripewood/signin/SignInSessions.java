package org.ripewood.signin;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Secret;
import org.ripewood.people.Person;
import org.ripewood.people.PersonEntity;

/** The sessions as they are kept. */
@ApplicationScoped
public class SignInSessions implements PanacheRepositoryBase<SignInSessionEntity, Long> {

    Optional<SignInSessionEntity> bySecret(String secret) {
        return find("secretHash", Secret.hash(secret)).firstResultOptional();
    }

    /** A session, and whose it is with their roles: asked at every request, so in one statement. */
    Optional<Owned> ownedBySecret(String secret) {
        return getEntityManager()
                .createQuery(
                        """
                        select s, p from SignInSessionEntity s
                        join PersonEntity p on p.id = s.personId left join fetch p.roles
                        where s.secretHash = :hash""",
                        Object[].class)
                .setParameter("hash", Secret.hash(secret))
                .getResultList()
                .stream()
                .findFirst()
                .map(
                        row ->
                                new Owned(
                                        (SignInSessionEntity) row[0],
                                        ((PersonEntity) row[1]).toRecord()));
    }

    record Owned(SignInSessionEntity session, Person person) {}

    List<SignInSessionEntity> of(long personId) {
        return list("personId = ?1 order by signedInAt desc, id desc", personId);
    }

    /** Ends every session of a person, on every node; one may be spared. */
    public void endAll(long personId, @Nullable Long spared) {
        of(personId).stream().filter(session -> !session.id.equals(spared)).forEach(this::delete);
    }
}
