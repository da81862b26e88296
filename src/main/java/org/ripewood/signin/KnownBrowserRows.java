package org.ripewood.signin;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
public class KnownBrowserRows implements PanacheRepositoryBase<KnownBrowserEntity, Long> {

    List<KnownBrowserEntity> of(long personId) {
        return list("personId = ?1 order by knownSince desc, id desc", personId);
    }

    public void forgetAll(long personId) {
        of(personId).forEach(this::delete);
    }
}
