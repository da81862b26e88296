package org.ripewood.sites;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
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
        return rows.groundZones().stream().map(ZoneId::of).toList();
    }

    /** The zone of one site; none when there is no such site. */
    public List<ZoneId> of(long siteId) {
        var row = rows.findById(siteId);
        return row == null ? List.of() : List.of(ZoneId.of(row.zone));
    }
}
