package org.ripewood.accounts;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Instant;
import java.util.Optional;
import org.ripewood.passwords.Secret;

@ApplicationScoped
class PasswordLinkRows implements PanacheRepositoryBase<PasswordLinkEntity, Long> {

    Optional<PasswordLinkEntity> bySecret(String secret, Instant now) {
        return find("tokenHash = ?1 and expiresAt > ?2", Secret.hash(secret), now)
                .firstResultOptional();
    }

    /** Held until the transaction ends: of two who use it at once the second finds none. */
    Optional<PasswordLinkEntity> bySecretForUse(String secret, Instant now) {
        return find("tokenHash = ?1 and expiresAt > ?2", Secret.hash(secret), now)
                .withLock(LockModeType.PESSIMISTIC_WRITE)
                .firstResultOptional();
    }
}
