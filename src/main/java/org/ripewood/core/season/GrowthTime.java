package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Degree-days in which a kind of tree grows wood at a place.
 *
 * <p>A day counts between bud swelling and leaf fall (stages 01 to 94 of the {@link SeasonModel})
 * when it has at least 10 hours of light (common practice, no source). Tropical trees, and all
 * trees at places where none rests, count every day. Degree-days are those of the single sine above
 * the species' base temperature, the mean over weather where days scatter ({@link ThermalTime}).
 * Heat above 32 °C adds nothing, but for tropical kinds.
 *
 * <p>Days before and after the span go by at the span's mean rate; no day after the span is ever
 * named as one that is reached. Worked out once for a place, a base and a habit, then O(1) there
 * and O(log n) back; threads may share it.
 */
public final class GrowthTime implements GrowthDays {

    private static final StageRange GROWS = new StageRange(1, 94);

    private final ThermalTime time;
    private final LocalDate end;
    private final double perDay;
    private final double referencePerYear;

    private GrowthTime(ThermalTime time, double referencePerYear) {
        this.time = time;
        this.referencePerYear = referencePerYear;
        this.end = time.lastDay().plusDays(1);
        this.perDay =
                time.between(time.firstDay(), end) / ChronoUnit.DAYS.between(time.firstDay(), end);
    }

    /**
     * Growth-time over the growing seasons that hold two days and all between.
     *
     * @param baseCelsius temperature above which the species grows, finite
     * @throws IllegalArgumentException when it is not finite, the days run backwards or over more
     *     than 200 years
     */
    public static GrowthTime of(
            Climate climate, Habit habit, double baseCelsius, LocalDate first, LocalDate last) {
        return of(SeasonModel.of(climate, habit, first, last), habit, baseCelsius);
    }

    /** Growth-time over the span of a season model made for the habit. */
    public static GrowthTime of(SeasonModel season, Habit habit, double baseCelsius) {
        return new GrowthTime(
                counted(season, habit, baseCelsius), ReferenceYear.growth(habit, baseCelsius));
    }

    /** Degree-days of the days that count, over the span of a season model. */
    static ThermalTime counted(SeasonModel season, Habit habit, double baseCelsius) {
        var progress = season.progress();
        boolean always = habit == Habit.TROPICAL || progress.alwaysGrowing();
        return ThermalTime.of(
                progress.climate().temperatures(),
                progress.firstDay(),
                progress.lastDay(),
                baseCelsius,
                habit == Habit.TROPICAL ? DegreeDays.NO_UPPER : SeasonProgress.UPPER_CELSIUS,
                day -> always || grows(season, progress, day));
    }

    private static boolean grows(SeasonModel season, SeasonProgress progress, LocalDate day) {
        return GROWS.holds(season.stageOn(day))
                && progress.hours(day) >= SeasonProgress.LEAST_DAY_HOURS;
    }

    public LocalDate firstDay() {
        return time.firstDay();
    }

    public LocalDate lastDay() {
        return time.lastDay();
    }

    @Override
    public double between(LocalDate from, LocalDate to) {
        return sinceFirst(to) - sinceFirst(from);
    }

    @Override
    public Optional<LocalDate> dayReaching(LocalDate from, double amount) {
        if (Double.isNaN(amount)) {
            throw new IllegalArgumentException("growth-time must be a number");
        }
        if (amount <= 0) {
            return Optional.of(from);
        }
        if (!(between(from, end) >= amount)) {
            return Optional.empty();
        }
        if (from.isBefore(firstDay())) {
            double until = between(from, firstDay());
            return until >= amount
                    ? Optional.of(exact(from, amount, from.plusDays((long) (amount / perDay))))
                    : dayReaching(firstDay(), amount - until);
        }
        return time.dayReaching(from, amount).map(day -> exact(from, amount, day.plusDays(1)));
    }

    /** Moves a day that rounding has put one too early or too late. */
    private LocalDate exact(LocalDate from, double amount, LocalDate near) {
        var day = near;
        while (between(from, day) < amount) {
            day = day.plusDays(1);
        }
        while (day.isAfter(from) && between(from, day.minusDays(1)) >= amount) {
            day = day.minusDays(1);
        }
        return day;
    }

    @Override
    public double referencePerYear() {
        return referencePerYear;
    }

    @Override
    public double meanPerYear() {
        return perDay * PLAIN_DAYS_PER_YEAR;
    }

    private double sinceFirst(LocalDate day) {
        if (day.isBefore(firstDay())) {
            return -perDay * ChronoUnit.DAYS.between(day, firstDay());
        }
        if (day.isAfter(end)) {
            return sinceFirst(end) + perDay * ChronoUnit.DAYS.between(end, day);
        }
        return time.between(firstDay(), day);
    }
}
