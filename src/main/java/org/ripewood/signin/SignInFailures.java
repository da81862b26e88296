package org.ripewood.signin;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

@ApplicationScoped
class SignInFailures implements PanacheRepositoryBase<SignInFailureEntity, Long> {

    /** When the oldest of so many latest ones was; empty when there are fewer since then. */
    Optional<Instant> nthLatest(String field, String key, int many, Instant since) {
        return find(field + " = ?1 and failedAt > ?2 order by failedAt desc, id desc", key, since)
                .range(many - 1, many - 1)
                .firstResultOptional()
                .map(failure -> failure.failedAt);
    }
}
