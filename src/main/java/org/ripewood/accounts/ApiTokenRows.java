package org.ripewood.accounts;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ripewood.passwords.Secret;

@ApplicationScoped
class ApiTokenRows implements PanacheRepositoryBase<ApiTokenEntity, Long> {

    List<ApiTokenEntity> of(long personId) {
        return list("personId = ?1 order by madeAt desc, id desc", personId);
    }

    Optional<ApiTokenEntity> bySecret(String secret, LocalDate today) {
        return find("secretHash = ?1 and lastDay >= ?2", Secret.hash(secret), today)
                .firstResultOptional();
    }

    /** Once a day and not by way of the entity: two requests at once must not meet on the row. */
    void used(ApiTokenEntity token, LocalDate today) {
        if (!today.equals(token.lastUsedOn)) {
            update("lastUsedOn = ?1 where id = ?2", today, token.id);
        }
    }

    void endAll(long personId) {
        of(personId).forEach(this::delete);
    }
}
