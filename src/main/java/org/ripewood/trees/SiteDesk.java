package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.Habit;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.sites.KnownSite;
import org.ripewood.sites.ReadingRows;
import org.ripewood.sites.Seasons;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteSeason;
import org.ripewood.sites.Sites;
import org.ripewood.sites.TreeSeason;

/** What is known of a site, and its seasons. */
@ApplicationScoped
public class SiteDesk {

    /** Species that grow below freezing, or only above 20 °C, are not known (common practice). */
    private static final double LOWEST_BASE = -5;

    private static final double HIGHEST_BASE = 20;

    /** What lies further ahead is the same normal year again. */
    private static final int YEARS_AHEAD = 5;

    private final Sites sites;
    private final ReadingRows readings;
    private final TreeRows trees;
    private final Seasons seasons;
    private final CourseContent content;
    private final Today today;

    SiteDesk(
            Sites sites,
            ReadingRows readings,
            TreeRows trees,
            Seasons seasons,
            CourseContent content,
            Today today) {
        this.sites = sites;
        this.readings = readings;
        this.trees = trees;
        this.seasons = seasons;
        this.content = content;
        this.today = today;
    }

    public KnownSite known(long siteId) {
        return known(sites.get(siteId));
    }

    public KnownSite known(Site site) {
        return new KnownSite(
                site,
                seasons.basis(site),
                readings.known(site.id()).orElse(null),
                trees.speciesAt(site.id()));
    }

    /** The season of a habit that begins in a year; the present one when none is given. */
    public SiteSeason season(long siteId, Habit habit, double baseCelsius, @Nullable Integer year) {
        if (!(baseCelsius >= LOWEST_BASE && baseCelsius <= HIGHEST_BASE)) {
            throw Refused.invalid(
                    "base",
                    "expected a temperature from %s to %s °C, found %s"
                            .formatted(LOWEST_BASE, HIGHEST_BASE, baseCelsius));
        }
        var site = sites.get(siteId);
        var season = GrowingSeason.of(dayOf(year), site.latitude());
        return laidOut(site, habit, baseCelsius, season, seasons.once(site, habit, baseCelsius));
    }

    /** The present season of a species. */
    public SiteSeason season(long siteId, String speciesCode) {
        var known = content.inForce().species();
        var species = known.get(speciesCode);
        if (species == null) {
            throw Refused.invalid(
                    "species",
                    "there is no species “%s”.%s"
                            .formatted(speciesCode, Suggestion.maybe(known.keySet(), speciesCode)));
        }
        var site = sites.get(siteId);
        return laidOut(
                site,
                species.traits().habit(),
                species.baseCelsius(),
                GrowingSeason.of(today.date(), site.latitude()),
                seasons.of(site, species));
    }

    private SiteSeason laidOut(
            Site site, Habit habit, double baseCelsius, GrowingSeason season, TreeSeason found) {
        return new SiteSeason(
                site,
                seasons.basis(site),
                habit,
                baseCelsius,
                season,
                found.growth(),
                found.usual());
    }

    /** A day in the season that begins in the year, whichever the hemisphere. */
    private LocalDate dayOf(@Nullable Integer year) {
        if (year == null) {
            return today.date();
        }
        int first = today.date().getYear() - Seasons.YEARS_BACK;
        int last = today.date().getYear() + YEARS_AHEAD;
        if (year < first || year > last) {
            throw Refused.invalid(
                    "year", "expected a year from %d to %d, found %d".formatted(first, last, year));
        }
        return LocalDate.of(year, 12, 31);
    }
}
