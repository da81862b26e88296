package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.course.Species;
import org.ripewood.platform.Today;

/**
 * The year as trees have it at each site. Worked out once for a site as it stands: a site that has
 * been changed is another, and a new year works it out anew, since forecasts look years ahead.
 */
@ApplicationScoped
class Seasons {

    /** Before these years growth goes by at the mean rate, which is what normals say anyway. */
    private static final int YEARS_BACK = 12;

    /** One more than forecasts reach, for records that are asked of from the year to come on. */
    private static final int YEARS_AHEAD = Outlook.REACH_YEARS + 11;

    private record Known(Site site, int year, SiteYears years) {}

    private final Today today;
    private final Map<Long, Known> bySite = new ConcurrentHashMap<>();

    Seasons(Today today) {
        this.today = today;
    }

    TreeSeason of(Site site, Species species) {
        var habit = species.traits().habit();
        if (site.meanMinimaCelsius().isEmpty()) {
            return new TreeSeason.Typical(TypicalYear.of(habit, site.latitude()));
        }
        return years(site).of(habit, species.baseCelsius());
    }

    private SiteYears years(Site site) {
        int year = today.date().getYear();
        var known = bySite.get(site.id());
        if (known == null || known.year() < year || !known.site().equals(site)) {
            known = new Known(site, year, workOut(site, year));
            bySite.put(site.id(), known);
        }
        return known.years();
    }

    private static SiteYears workOut(Site site, int year) {
        var normal = NormalYear.of(site.meanMinimaCelsius(), site.meanMaximaCelsius());
        return new SiteYears(
                new Climate(site.latitude(), normal),
                LocalDate.of(year - YEARS_BACK, 1, 1),
                LocalDate.of(year + YEARS_AHEAD, 12, 31));
    }
}
