package org.ripewood.trees;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;

@ApplicationScoped
class SiteRows implements PanacheRepositoryBase<SiteEntity, Long> {

    /** Sites with their months in one query. */
    static final String WITH_MONTHS =
            "select distinct s from SiteEntity s left join fetch s.months";
}
