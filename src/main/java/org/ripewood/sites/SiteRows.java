package org.ripewood.sites;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

@ApplicationScoped
public class SiteRows implements PanacheRepositoryBase<SiteEntity, Long> {

    /** Sites with their months in one query. */
    public static final String WITH_MONTHS =
            "select distinct s from SiteEntity s left join fetch s.months";

    public List<SiteEntity> byName() {
        return find(WITH_MONTHS, Sort.by("s.name").and("s.id")).list();
    }
}
