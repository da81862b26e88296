package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
class TreeRows implements PanacheRepositoryBase<TreeEntity, Long> {

    /** Codes of the species at a site, the most frequent first. */
    List<String> speciesAt(long siteId) {
        return getEntityManager()
                .createQuery(
                        "select t.species from TreeEntity t where t.siteId = :site"
                                + " group by t.species order by count(t) desc, t.species",
                        String.class)
                .setParameter("site", siteId)
                .getResultList();
    }
}
