package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;

@ApplicationScoped
class TreeRows implements PanacheRepositoryBase<TreeEntity, Long> {

    Set<Long> sitesOf(Collection<Long> keepers) {
        return Set.copyOf(
                getEntityManager()
                        .createQuery(
                                "select distinct t.siteId from TreeEntity t where t.keeperId in"
                                        + " :keepers",
                                Long.class)
                        .setParameter("keepers", keepers)
                        .getResultList());
    }

    Set<Long> sitesTaken() {
        return Set.copyOf(
                getEntityManager()
                        .createQuery("select distinct t.siteId from TreeEntity t", Long.class)
                        .getResultList());
    }

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
