package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.Habit;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.sites.KnownSite;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.ReadingRows;
import org.ripewood.sites.ReadingsBook;
import org.ripewood.sites.ReadingsImport;
import org.ripewood.sites.Seasons;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;
import org.ripewood.sites.SiteSeason;
import org.ripewood.sites.Sites;
import org.ripewood.sites.TreeSeason;

/** Sites, as people reach them by the trees that stand there, and their seasons. */
@ApplicationScoped
@Transactional
public class TreeSites {

    /** Species that grow below freezing, or only above 20 °C, are not known (common practice). */
    private static final double LOWEST_BASE = -5;

    private static final double HIGHEST_BASE = 20;

    /** What lies further ahead is the same normal year again. */
    private static final int YEARS_AHEAD = 5;

    private final Sites sites;
    private final SiteReach reach;
    private final ReadingsBook imports;
    private final ReadingRows readings;
    private final TreeRows trees;
    private final Seasons seasons;
    private final CourseContent content;
    private final Today today;

    TreeSites(
            Sites sites,
            SiteReach reach,
            ReadingsBook imports,
            ReadingRows readings,
            TreeRows trees,
            Seasons seasons,
            CourseContent content,
            Today today) {
        this.sites = sites;
        this.reach = reach;
        this.imports = imports;
        this.readings = readings;
        this.trees = trees;
        this.seasons = seasons;
        this.content = content;
        this.today = today;
    }

    /** Enters a site; instructors and registrars only. */
    public Site enter(Actor actor, NewSite site) {
        return sites.enter(actor, site);
    }

    /**
     * Changes name, place and monthly means of a site within reach: by who entered it, an
     * instructor of most whose trees stand there, or a registrar. 412 when the version is not the
     * current one.
     */
    public KnownSite change(Actor actor, long siteId, long version, NewSite site) {
        reach.requireToChange(actor, siteId, "change it");
        return known(sites.change(siteId, version, site));
    }

    /** Whether the actor may change a site within their reach, and bring in readings. */
    public boolean mayChange(Actor actor, long siteId) {
        reach.require(actor, siteId);
        return reach.mayChange(actor, siteId);
    }

    /** A site within reach and what is known of it; 404 otherwise. */
    public KnownSite get(Actor actor, long siteId) {
        reach.require(actor, siteId);
        return known(sites.get(siteId));
    }

    /** All sites, by name; of those out of reach no more than the name. */
    public List<SiteLine> list(Actor actor) {
        return reach.lines(actor);
    }

    /**
     * Keeps the daily readings in a text, for those who may {@link #change change} the site.
     *
     * <p>Good lines are kept whatever the others are. A day that was imported before is read anew:
     * readings are measurements of the site and not part of any tree's record.
     *
     * @param text a line a day with date, tmin and tmax in °C, or GHCN-Daily's layout by station
     */
    public ReadingsImport importReadings(Actor actor, long siteId, String text) {
        reach.requireToChange(actor, siteId, "bring in its readings");
        return imports.take(siteId, text);
    }

    private KnownSite known(Site site) {
        return new KnownSite(
                site,
                seasons.basis(site),
                readings.known(site.id()).orElse(null),
                trees.speciesAt(site.id()));
    }

    /**
     * A growing season at a site within reach, for trees nobody has looked at.
     *
     * @param year in which it begins; the present season when null
     */
    public SiteSeason season(
            Actor actor, long siteId, Habit habit, double baseCelsius, @Nullable Integer year) {
        reach.require(actor, siteId);
        if (!(baseCelsius >= LOWEST_BASE && baseCelsius <= HIGHEST_BASE)) {
            throw Refused.invalid(
                    "base",
                    "expected a temperature from %s to %s °C, found %s"
                            .formatted(LOWEST_BASE, HIGHEST_BASE, baseCelsius));
        }
        var site = sites.get(siteId);
        var day = dayOf(site, year);
        return laidOut(
                site,
                habit,
                baseCelsius,
                GrowingSeason.of(day, site.latitude()),
                seasons.once(site, habit, baseCelsius, day.getYear()));
    }

    /** The present growing season of a species at a site within reach. */
    public SiteSeason season(Actor actor, long siteId, String speciesCode) {
        reach.require(actor, siteId);
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
                GrowingSeason.of(today.in(site.zone()), site.latitude()),
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
    private LocalDate dayOf(Site site, @Nullable Integer year) {
        if (year == null) {
            return today.in(site.zone());
        }
        int first = seasons.firstYear(site);
        int last = today.date().getYear() + YEARS_AHEAD;
        if (year < first || year > last) {
            throw Refused.invalid(
                    "year", "expected a year from %d to %d, found %d".formatted(first, last, year));
        }
        return LocalDate.of(year, 12, 31);
    }
}
