package org.ripewood.core.progress;

import java.time.LocalDate;
import org.ripewood.core.season.Outlook;

/**
 * An outlook in days to come, one for each of its three days; {@link #BEYOND} when out of reach.
 *
 * <p>Several are joined day by day, the latest of the earliest, of the likely and of the latest
 * days: as if they all came early or all late together. Were they independent, the joined likely
 * day would lie somewhat later.
 */
record DaysAhead(int earliest, int likely, int latest) {

    static final int BEYOND = Integer.MAX_VALUE;
    static final DaysAhead NOW = new DaysAhead(0, 0, 0);

    /** Farther away no season is looked for. */
    private static final int MOST = Outlook.REACH_YEARS * 366;

    static DaysAhead of(Outlook.Expected expected, LocalDate on) {
        var last = expected.latest();
        return new DaysAhead(
                ahead(expected.earliest(), on),
                ahead(expected.likely(), on),
                last == null ? BEYOND : ahead(last, on));
    }

    private static int ahead(LocalDate day, LocalDate on) {
        long days = day.toEpochDay() - on.toEpochDay();
        return days > MOST ? BEYOND : (int) Math.max(0, days);
    }

    /** The same counted from a later day; what lies before it is 0. */
    DaysAhead since(int day) {
        return new DaysAhead(since(earliest, day), since(likely, day), since(latest, day));
    }

    private static int since(int ahead, int day) {
        return ahead == BEYOND ? BEYOND : Math.max(0, ahead - day);
    }

    DaysAhead orLater(DaysAhead other) {
        return new DaysAhead(
                Math.max(earliest, other.earliest),
                Math.max(likely, other.likely),
                Math.max(latest, other.latest));
    }

    /** Each moved on to the first day from there on which the season is open. */
    DaysAhead toOpen(CompiledSeason season, StagesAhead stages) {
        return new DaysAhead(
                open(season, stages, earliest),
                open(season, stages, likely),
                open(season, stages, latest));
    }

    private static int open(CompiledSeason season, StagesAhead stages, int from) {
        int days = from == BEYOND ? CompiledSeason.NEVER : season.daysToOpen(stages, from);
        return days == CompiledSeason.NEVER ? BEYOND : days;
    }

    Outlook outlook(LocalDate on) {
        if (likely == BEYOND) {
            return new Outlook.Unsaid(
                    "No day with an open season is in sight within "
                            + Outlook.REACH_YEARS
                            + " years.");
        }
        return new Outlook.Expected(
                on.plusDays(earliest),
                on.plusDays(likely),
                latest == BEYOND ? null : on.plusDays(latest));
    }
}
