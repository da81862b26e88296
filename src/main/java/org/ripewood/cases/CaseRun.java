package org.ripewood.cases;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ripewood.condition.TreeState;
import org.ripewood.core.growth.CallusPace;
import org.ripewood.core.growth.ClosingBelief;
import org.ripewood.course.Content;
import org.ripewood.course.JudgementCase;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteYears;
import org.ripewood.standing.SubjectGatherer;
import org.ripewood.standing.TreeOnDay;

/**
 * Plays judgement cases by the rules of a content, without a database: the record each case tells
 * is derived and judged as the service does it with a tree's.
 *
 * <p>Each case is played on the latest such day of the year that is not after a fixed day, so that
 * what comes out does not hang on today. Not for several threads.
 */
public final class CaseRun {

    /** Cases are played on the latest day of theirs up to this one. */
    public static final LocalDate UP_TO = LocalDate.of(2026, 12, 31);

    /** Growth-time is wanted back to the oldest wound and reading, and a little ahead. */
    private static final int YEARS_BACK = 12;

    private static final int YEARS_AHEAD = 2;

    /** The means of one place for all of its species. */
    private record Place(Site site, SiteYears years) {}

    private final Content content;
    private final LocalDate upTo;
    private final Map<JudgementCase.Climate, Place> places = new HashMap<>();

    /**
     * @param upTo no case is played on a later day
     */
    public CaseRun(Content content, LocalDate upTo) {
        this.content = content;
        this.upTo = upTo;
    }

    /** The cases of a content that do not come out as their teachers say. */
    public static List<CaseOutcome> disagreeing(Content content) {
        var run = new CaseRun(content, UP_TO);
        return content.cases().stream().map(run::play).filter(CaseOutcome::disagrees).toList();
    }

    /** What the rules say of a case, held against what its teacher says. */
    public CaseOutcome play(JudgementCase told) {
        return new CaseComparison(told, tree(told)).outcome();
    }

    /** The day a case is played on. */
    public LocalDate dayOf(JudgementCase told) {
        int year = upTo.getYear();
        while (!told.day().isValidYear(year) || told.day().atYear(year).isAfter(upTo)) {
            year--;
        }
        return told.day().atYear(year);
    }

    /** A case's tree on its day, judged. */
    public TreeOnDay tree(JudgementCase told) {
        var on = dayOf(told);
        var place = places.computeIfAbsent(told.climate(), this::place);
        var species = content.species(told.species());
        var state =
                TreeState.of(
                        CaseRecord.of(told, content, place.site(), on),
                        content,
                        species,
                        place.years().of(species.traits().habit(), species.baseCelsius()),
                        ClosingBelief.of(
                                CallusPace.valueOf(species.callusPace().toUpperCase(Locale.ROOT))
                                        .belief()));
        var subject =
                SubjectGatherer.subject(
                        content, state, CaseRecord.signedOff(told, on), told.skills());
        var openings = content.rulebook().openings(subject, on);
        return new TreeOnDay(content, state, subject, openings, Map.of());
    }

    private Place place(JudgementCase.Climate climate) {
        var site =
                new Site(
                        1,
                        climate.title(),
                        climate.latitude(),
                        0,
                        ZoneOffset.UTC,
                        false,
                        climate.minCelsius(),
                        climate.maxCelsius(),
                        0,
                        0);
        return new Place(
                site,
                SiteYears.ofMeans(
                        site,
                        LocalDate.of(upTo.getYear() - YEARS_BACK, 1, 1),
                        LocalDate.of(upTo.getYear() + YEARS_AHEAD, 12, 31)));
    }
}
