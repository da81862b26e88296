package org.ripewood.sites;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.hibernate.jpa.HibernateHints;

@ApplicationScoped
class SiteRows implements PanacheRepositoryBase<SiteEntity, Long> {

    /** Sites with their months in one query. */
    static final String WITH_MONTHS =
            "select distinct s from SiteEntity s left join fetch s.months";

    List<SiteEntity> byName() {
        return find(WITH_MONTHS, Sort.by("s.name").and("s.id")).list();
    }

    List<String> groundZones() {
        return find("select distinct s.zone from SiteEntity s where s.schoolGround = true")
                .project(String.class)
                .list();
    }

    /** Read-only, so that nothing is compared again when the transaction ends. */
    List<SiteEntity> read(String query, Object... parameters) {
        return find(query, parameters).withHint(HibernateHints.HINT_READ_ONLY, true).list();
    }
}
