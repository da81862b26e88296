package org.ripewood.secondfactor;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

@ApplicationScoped
class SecondFactorRows implements PanacheRepositoryBase<SecondFactorEntity, Long> {

    Optional<SecondFactorEntity> on(long personId) {
        return find("personId = ?1 and onSince is not null", personId).firstResultOptional();
    }

    /** Whether a code's step of time counts: of two who send it at once, the first one's does. */
    boolean take(long personId, long step) {
        return update("lastStep = ?1 where personId = ?2 and lastStep < ?1", step, personId) == 1;
    }
}
