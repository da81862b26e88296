package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
class KnownBrowserRows implements PanacheRepositoryBase<KnownBrowserEntity, Long> {

    List<KnownBrowserEntity> of(long personId) {
        return list("personId = ?1 order by knownSince desc, id desc", personId);
    }

    void forgetAll(long personId) {
        of(personId).forEach(this::delete);
    }
}
