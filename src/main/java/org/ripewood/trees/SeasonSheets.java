package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.PlaceYear;
import org.ripewood.core.season.Span;
import org.ripewood.core.season.StageClock;
import org.ripewood.core.season.StageRange;
import org.ripewood.core.season.TypicalYear;
import org.ripewood.core.season.WorkClock;
import org.ripewood.core.season.WorkClocks;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Species;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.sites.Seasons;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;

/** The seasons of all techniques for a species at a site within reach. */
@ApplicationScoped
public class SeasonSheets {

    /** Where no site is chosen. */
    private static final double LATITUDE = 50;

    private static final String BY_FLOWERS = "goes by the flowers: look";
    private static final int MIDDLE_OF_MONTH = 16;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.UK);

    private final TreeSites sites;
    private final Seasons seasons;
    private final CourseContent content;
    private final Today today;

    SeasonSheets(TreeSites sites, Seasons seasons, CourseContent content, Today today) {
        this.sites = sites;
        this.seasons = seasons;
        this.content = content;
        this.today = today;
    }

    /** The sites it can be laid out for, by name. */
    public List<Site> choice(Actor actor) {
        var choice = new ArrayList<Site>();
        for (SiteLine line : sites.list(actor)) {
            var place = line.place();
            if (place != null) {
                choice.add(place);
            }
        }
        return List.copyOf(choice);
    }

    /**
     * The sheet of a species in the present growing season; 404 for a species the content does not
     * have and for a site out of reach.
     *
     * @param siteId null for a mild cool-temperate year in the north
     */
    public SeasonSheet of(Actor actor, String speciesCode, @Nullable Long siteId) {
        var inForce = content.inForce();
        var species = inForce.species(speciesCode);
        if (siteId == null) {
            var year = TypicalYear.of(species.traits().habit(), LATITUDE);
            return sheet(inForce, species, null, LATITUDE, year, year.place());
        }
        var site = sites.get(actor, siteId).site();
        var season = seasons.of(site, species);
        return sheet(inForce, species, site, site.latitude(), season.usual(), season.place());
    }

    private SeasonSheet sheet(
            Content inForce,
            Species species,
            @Nullable Site site,
            double latitude,
            StageClock stages,
            PlaceYear place) {
        var first = GrowingSeason.of(today.date(), latitude).firstDay();
        var halves = halfMonths(first);
        var year = new Span(first, first.plusYears(1).minusDays(1));
        var parts = new ArrayList<SeasonSheet.Part>();
        for (var stage : inForce.stages()) {
            var rows = new ArrayList<SeasonSheet.Row>();
            for (var technique : inForce.techniques().values()) {
                var rule = technique.rule();
                if (technique.stage().equals(stage.code()) && rule.isFor(species.traits())) {
                    var open = rule.season().open(species.traits(), stages, place, year);
                    rows.add(
                            new SeasonSheet.Row(
                                    technique.code(),
                                    technique.title(),
                                    halves.stream().map(half -> mark(half, open)).toList(),
                                    rule.season().goesByFlowersAlone(species.traits())
                                            ? BY_FLOWERS
                                            : days(open, year)));
                }
            }
            parts.add(new SeasonSheet.Part(stage.title(), List.copyOf(rows)));
        }
        return new SeasonSheet(
                site,
                species,
                first,
                place.withoutWinter(),
                months(first.getMonth()),
                halves.stream().map(half -> "%02d".formatted(stages.stageOn(half.from()))).toList(),
                clocks(species.traits().clocks()),
                List.copyOf(parts));
    }

    private static List<Span> halfMonths(LocalDate first) {
        var halves = new ArrayList<Span>();
        for (int month = 0; month < Month.values().length; month++) {
            var begins = first.plusMonths(month);
            var middle = begins.withDayOfMonth(MIDDLE_OF_MONTH);
            halves.add(new Span(begins, middle.minusDays(1)));
            halves.add(new Span(middle, begins.plusMonths(1).minusDays(1)));
        }
        return halves;
    }

    private static List<String> months(Month first) {
        return IntStream.range(0, Month.values().length)
                .mapToObj(first::plus)
                .map(month -> month.getDisplayName(TextStyle.SHORT, Locale.UK))
                .toList();
    }

    private static String mark(Span half, List<Span> open) {
        long days = ChronoUnit.DAYS.between(half.from(), half.to()) + 1;
        long in =
                half.from()
                        .datesUntil(half.to().plusDays(1))
                        .filter(day -> open.stream().anyMatch(span -> span.holds(day)))
                        .count();
        return in == 0 ? "" : 2 * in >= days ? "x" : "·";
    }

    private static String days(List<Span> open, Span year) {
        if (open.isEmpty()) {
            return "not in a usual year";
        }
        if (open.equals(List.of(year))) {
            return "all the year";
        }
        return open.stream()
                .map(span -> DAY.format(span.from()) + " to " + DAY.format(span.to()))
                .collect(Collectors.joining("; "));
    }

    private static List<SeasonSheet.Clock> clocks(WorkClocks clocks) {
        var told = new ArrayList<SeasonSheet.Clock>();
        for (var clock : WorkClock.values()) {
            var words = clocks.of(clock).stream().map(SeasonSheets::words);
            told.add(
                    new SeasonSheet.Clock(
                            title(clock), words.collect(Collectors.joining("; and "))));
        }
        if (!clocks.bleeding().isEmpty()) {
            told.add(new SeasonSheet.Clock("Cuts bleed", ranges(clocks.bleeding())));
        }
        if (!clocks.flowersFade().isEmpty()) {
            told.add(new SeasonSheet.Clock("Flowers fade at", ranges(clocks.flowersFade())));
        }
        var shelter = clocks.shelterBelowCelsius();
        if (shelter != null) {
            told.add(
                    new SeasonSheet.Clock(
                            "Sheltered from", "usual nights below %.0f °C".formatted(shelter)));
        }
        return List.copyOf(told);
    }

    private static String title(WorkClock clock) {
        return switch (clock) {
            case ROOT_WORK -> "Root work";
            case SMALL_CUTS -> "Small cuts";
            case LARGE_CUTS -> "Large cuts";
            case CHOP -> "Chop";
            case WIRING -> "Wiring";
            case FEEDING -> "Feeding";
            case DEADWOOD -> "Deadwood";
        };
    }

    private static String words(WorkClocks.Stages stages) {
        return stages.growingDaysLeft() == 0
                ? ranges(stages.ranges())
                : "%s with %d days of growth left before frost"
                        .formatted(ranges(stages.ranges()), stages.growingDaysLeft());
    }

    private static String ranges(List<StageRange> ranges) {
        return ranges.stream()
                .map(range -> "%02d to %02d".formatted(range.from(), range.to()))
                .collect(Collectors.joining(" or "));
    }
}
