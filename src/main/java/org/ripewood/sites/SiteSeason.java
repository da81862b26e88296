package org.ripewood.sites;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.DayLength;
import org.ripewood.core.season.GrowingSeason;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.StageClock;

/**
 * One growing season of a kind of tree at a site.
 *
 * @param baseCelsius degree-days count from it
 * @param growth calendar days where temperatures are not known
 * @param stages of a tree nobody has looked at
 */
public record SiteSeason(
        Site site,
        SeasonBasis basis,
        Habit habit,
        double baseCelsius,
        GrowingSeason season,
        GrowthDays growth,
        StageClock stages) {

    /**
     * A day of the season.
     *
     * @param stage BBCH code, 0 to 99
     * @param daylightHours from sunrise to sunset
     * @param degreeDays of growth gone by since the season's first day, this day included; null
     *     when temperatures are not known
     */
    public record Day(
            LocalDate day, int stage, double daylightHours, @Nullable Double degreeDays) {}

    /** Whether degree-days can be told. */
    public boolean hasWarmth() {
        return basis != SeasonBasis.TYPICAL_YEAR;
    }

    /** Every day of it. */
    public List<Day> days() {
        var first = season.firstDay();
        var days = new ArrayList<Day>();
        for (var day = first; season.holds(day); day = day.plusDays(1)) {
            double hours = DayLength.hours(site.latitude(), day.getDayOfYear());
            days.add(
                    new Day(
                            day,
                            stages.stageOn(day),
                            Math.rint(hours * 100) / 100,
                            hasWarmth() ? sum(first, day) : null));
        }
        return days;
    }

    private double sum(LocalDate first, LocalDate day) {
        return Math.rint(growth.between(first, day.plusDays(1)) * 10) / 10;
    }
}
