package org.ripewood.signin;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.passwords.Secret;

/** The sessions as they are kept. */
@ApplicationScoped
public class SignInSessions implements PanacheRepositoryBase<SignInSessionEntity, Long> {

    Optional<SignInSessionEntity> bySecret(String secret) {
        return find("secretHash", Secret.hash(secret)).firstResultOptional();
    }

    List<SignInSessionEntity> of(long personId) {
        return list("personId = ?1 order by signedInAt desc, id desc", personId);
    }

    /** Ends every session of a person, on every node; one may be spared. */
    public void endAll(long personId, @Nullable Long spared) {
        of(personId).stream().filter(session -> !session.id.equals(spared)).forEach(this::delete);
    }
}
