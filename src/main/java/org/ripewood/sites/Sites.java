package org.ripewood.sites;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** Places where trees stand. */
@ApplicationScoped
public class Sites {

    private static final int MONTHS = 12;

    private final SiteRows rows;

    Sites(SiteRows rows) {
        this.rows = rows;
    }

    public Site enter(Actor actor, NewSite site) {
        requireKeeperOfSites(actor, "enter a site");
        var row = new SiteEntity();
        row.enteredById = actor.personId();
        write(row, site);
        rows.persist(row);
        return row.toSite();
    }

    public Site change(long siteId, long version, NewSite site) {
        var row = rows.findById(siteId, LockModeType.PESSIMISTIC_WRITE);
        if (row == null) {
            throw Refused.notFound("site", siteId);
        }
        if (row.version != version) {
            throw Refused.stale("site");
        }
        write(row, site);
        rows.flush();
        return row.toSite();
    }

    private static void write(SiteEntity row, NewSite site) {
        requireZone(site.zone());
        var months = months(site.meanMinimaCelsius(), site.meanMaximaCelsius());
        row.name = site.name();
        row.latitude = site.latitude();
        row.longitude = site.longitude();
        row.zone = site.zone();
        row.schoolGround = site.isSchoolGround();
        row.months.clear();
        row.months.addAll(months);
    }

    /** Whoever teaches or keeps the register sees to the sites. */
    public static void requireKeeperOfSites(Actor actor, String what) {
        if (!actor.is(Role.REGISTRAR)) {
            actor.require(Role.INSTRUCTOR, what);
        }
    }

    /** Sites by id, in one query; ids of no site are absent. */
    public Map<Long, Site> byIds(Collection<Long> ids) {
        return rows.read(SiteRows.WITH_MONTHS + " where s.id in ?1", ids).stream()
                .map(SiteEntity::toSite)
                .collect(Collectors.toMap(Site::id, Function.identity()));
    }

    /** A site and who entered it; null when there is none. */
    public @Nullable SiteEntered find(long siteId) {
        var row = rows.findById(siteId);
        return row == null ? null : row.toEntered();
    }

    /** All sites by name, and who entered them. */
    public List<SiteEntered> byName() {
        return rows.byName().stream().map(SiteEntity::toEntered).toList();
    }

    public Site get(long siteId) {
        var row = rows.findById(siteId);
        if (row == null) {
            throw Refused.notFound("site", siteId);
        }
        return row.toSite();
    }

    private static void requireZone(String zone) {
        var fault = TimeZones.faultOf(zone);
        if (fault != null) {
            throw Refused.invalid("zone", fault);
        }
    }

    private static List<MonthMeans> months(
            @Nullable List<Double> minima, @Nullable List<Double> maxima) {
        if (minima == null && maxima == null) {
            return List.of();
        }
        if (minima == null || maxima == null) {
            throw Refused.invalid(
                    minima == null ? "meanMinimaCelsius" : "meanMaximaCelsius",
                    "expected twelve monthly means of both minima and maxima, or neither");
        }
        if (minima.size() != MONTHS || maxima.size() != MONTHS) {
            throw Refused.invalid(
                    minima.size() == MONTHS ? "meanMaximaCelsius" : "meanMinimaCelsius",
                    "expected twelve monthly means");
        }
        var months = new ArrayList<MonthMeans>(MONTHS);
        for (int i = 0; i < MONTHS; i++) {
            months.add(month(i + 1, minima.get(i), maxima.get(i)));
        }
        return months;
    }

    private static MonthMeans month(int number, double minimum, double maximum) {
        if (!(minimum <= maximum)) {
            throw Refused.invalid(
                    "meanMinimaCelsius",
                    "in month %d the mean minimum %s lies above the mean maximum %s"
                            .formatted(number, minimum, maximum));
        }
        return new MonthMeans(minimum, maximum);
    }
}
