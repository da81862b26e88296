package org.ripewood.sites;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import org.ripewood.platform.GroundZones;

/** In which zones sites lie. */
@ApplicationScoped
@Transactional
public class SiteZones implements GroundZones {

    private final SiteRows rows;

    SiteZones(SiteRows rows) {
        this.rows = rows;
    }

    @Override
    public List<ZoneId> all() {
        return zones(rows.zones("s.schoolGround = true"));
    }

    /** The zones of these sites, each once. */
    public List<ZoneId> of(Collection<Long> siteIds) {
        return siteIds.isEmpty() ? List.of() : zones(rows.zones("s.id in ?1", siteIds));
    }

    /** The zone of one site; none when there is no such site. */
    public List<ZoneId> of(long siteId) {
        var row = rows.findById(siteId);
        return row == null ? List.of() : List.of(ZoneId.of(row.zone));
    }

    private static List<ZoneId> zones(List<String> names) {
        return names.stream().map(ZoneId::of).toList();
    }
}
