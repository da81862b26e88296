package org.ripewood.sites;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.Climate;
import org.ripewood.core.season.DailyReadings;
import org.ripewood.core.season.DayReading;
import org.ripewood.core.season.DayTemperatures;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.NormalYear;
import org.ripewood.core.season.Outlook;
import org.ripewood.core.season.ReadingsNormal;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.course.Species;
import org.ripewood.platform.Today;

/**
 * The year as trees have it at each site. Worked out once for a site as it stands: a site that has
 * been changed or has got readings is another, and a new year works it out anew, since forecasts
 * look years ahead.
 *
 * <p>Readings go before monthly means, which answer for days that were not read. A site with
 * readings alone needs about a year of them ({@link ReadingsNormal#enough}).
 */
@ApplicationScoped
public class Seasons {

    /** Before these years growth goes by at the mean rate, which is what normals say anyway. */
    public static final int YEARS_BACK = 12;

    /** One more than forecasts reach, for records that are asked of from the year to come on. */
    private static final int YEARS_AHEAD = Outlook.REACH_YEARS + 11;

    /** A climate normal is made of 30 years (WMO-No. 1203); older readings would only cool it. */
    private static final int YEARS_READ = 30;

    private static final List<DayReading> NONE = List.of();

    /** Years are null where no temperatures are known. */
    private record Known(Site site, int year, SeasonBasis basis, @Nullable SiteYears years) {}

    private final Today today;
    private final ReadingRows readings;
    private final Map<Long, Known> bySite = new ConcurrentHashMap<>();

    Seasons(Today today, ReadingRows readings) {
        this.today = today;
        this.readings = readings;
    }

    public TreeSeason of(Site site, Species species) {
        var habit = species.traits().habit();
        var years = known(site).years();
        return years == null ? typical(site, habit) : years.of(habit, species.baseCelsius());
    }

    /** For any base, worked out each time. */
    public TreeSeason once(Site site, Habit habit, double baseCelsius) {
        var years = known(site).years();
        return years == null ? typical(site, habit) : years.once(habit, baseCelsius);
    }

    /**
     * The same in a year further back than growth is kept for: by what was read around that year,
     * in front of the same normal year as always.
     */
    public TreeSeason once(Site site, Habit habit, double baseCelsius, int year) {
        if (year >= today.date().getYear() - YEARS_BACK) {
            return once(site, habit, baseCelsius);
        }
        var first = LocalDate.of(year - 1, 1, 1);
        var last = LocalDate.of(year + 1, 12, 31);
        var read = site.hasReadings() ? readings.between(site.id(), first, last) : NONE;
        return normal(site)
                .map(normal -> new Climate(site.latitude(), DailyReadings.over(normal, read)))
                .map(climate -> new SiteYears(climate, first, last).once(habit, baseCelsius))
                .orElseGet(() -> typical(site, habit));
    }

    /** The year as it usually is at the site; empty where no temperatures are known. */
    private Optional<NormalYear> normal(Site site) {
        if (site.hasMeans()) {
            return Optional.of(NormalYear.of(site.meanMinimaCelsius(), site.meanMaximaCelsius()));
        }
        var read = site.hasReadings() ? latest(site.id()) : NONE;
        return ReadingsNormal.enough(read)
                ? Optional.of(ReadingsNormal.of(read))
                : Optional.empty();
    }

    /** The first year a season may be asked for: the oldest with readings, if nothing older. */
    public int firstYear(Site site) {
        int kept = today.date().getYear() - YEARS_BACK;
        return readings.known(site.id())
                .map(known -> Math.min(kept, known.first().getYear()))
                .orElse(kept);
    }

    public SeasonBasis basis(Site site) {
        return known(site).basis();
    }

    private static TreeSeason typical(Site site, Habit habit) {
        return new TreeSeason.Typical(TypicalYear.of(habit, site.latitude()));
    }

    private Known known(Site site) {
        int year = today.date().getYear();
        var known = bySite.get(site.id());
        if (known == null || known.year() < year || !known.site().equals(site)) {
            known = workOut(site, year);
            bySite.put(site.id(), known);
        }
        return known;
    }

    private Known workOut(Site site, int year) {
        var read = site.hasReadings() ? latest(site.id()) : NONE;
        if (site.hasMeans()) {
            var normal = NormalYear.of(site.meanMinimaCelsius(), site.meanMaximaCelsius());
            return read.isEmpty()
                    ? known(site, year, SeasonBasis.MONTHLY_MEANS, normal)
                    : known(
                            site,
                            year,
                            SeasonBasis.READINGS_AND_MEANS,
                            DailyReadings.over(normal, read));
        }
        return ReadingsNormal.enough(read)
                ? known(site, year, SeasonBasis.READINGS, DailyReadings.alone(read))
                : new Known(site, year, SeasonBasis.TYPICAL_YEAR, null);
    }

    private List<DayReading> latest(long siteId) {
        return readings.known(siteId)
                .map(
                        known ->
                                readings.between(
                                        siteId,
                                        known.last().minusYears(YEARS_READ).plusDays(1),
                                        known.last()))
                .orElse(List.of());
    }

    private static Known known(
            Site site, int year, SeasonBasis basis, DayTemperatures temperatures) {
        return new Known(
                site,
                year,
                basis,
                new SiteYears(
                        new Climate(site.latitude(), temperatures),
                        LocalDate.of(year - YEARS_BACK, 1, 1),
                        LocalDate.of(year + YEARS_AHEAD, 12, 31)));
    }
}
