package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Degree-days that have gone by at a site, day by day, and the way back from degree-days to days.
 *
 * <p>Sums are kept for every day of a span, so that any interval is a difference of two numbers,
 * and its inverse a binary search. Days that do not count (outside the growing season, too short)
 * add nothing. A day's degree-days are counted when the day is over.
 */
public final class ThermalTime {

    private final LocalDate first;

    /** Entry i: the degree-days of the first i days of the span. */
    private final double[] sums;

    private ThermalTime(LocalDate first, double[] sums) {
        this.first = first;
        this.sums = sums;
    }

    /**
     * Adds up a span.
     *
     * <p>Where days scatter around the given temperatures, a day's degree-days are the mean over
     * weather: three-point Gauss–Hermite, −√3σ, 0, +√3σ with weights 1/6, 2/3, 1/6.
     *
     * @param first first day of the span
     * @param last last day of the span, not before the first
     * @param lowerCelsius base temperature
     * @param upperCelsius temperature above which more heat adds nothing, or {@link
     *     DegreeDays#NO_UPPER}
     * @param counts whether a day counts
     * @throws IllegalArgumentException when the span runs backwards or over more than 200 years
     */
    public static ThermalTime of(
            DayTemperatures temperatures,
            LocalDate first,
            LocalDate last,
            double lowerCelsius,
            double upperCelsius,
            Predicate<LocalDate> counts) {
        long days = ChronoUnit.DAYS.between(first, last) + 1;
        if (days < 1 || days > 200 * 366) {
            throw new IllegalArgumentException(
                    "a span of 1 day to 200 years is needed, found %s to %s"
                            .formatted(first, last));
        }
        var sums = new double[(int) days + 1];
        for (int i = 0; i < days; i++) {
            var day = first.plusDays(i);
            double today =
                    counts.test(day) ? ofDay(temperatures, day, lowerCelsius, upperCelsius) : 0;
            sums[i + 1] = sums[i] + today;
        }
        return new ThermalTime(first, sums);
    }

    /** Degree-days of one day, the mean over weather where days scatter. */
    static double ofDay(DayTemperatures temperatures, LocalDate day, double lower, double upper) {
        double min = temperatures.minCelsius(day);
        double max = temperatures.maxCelsius(day);
        double shift = Math.sqrt(3) * temperatures.scatterCelsius(day);
        double middle = DegreeDays.singleSine(min, max, lower, upper);
        if (shift == 0) {
            return middle;
        }
        return middle * 2 / 3
                + DegreeDays.singleSine(min - shift, max - shift, lower, upper) / 6
                + DegreeDays.singleSine(min + shift, max + shift, lower, upper) / 6;
    }

    public LocalDate firstDay() {
        return first;
    }

    public LocalDate lastDay() {
        return first.plusDays(sums.length - 2L);
    }

    /**
     * Degree-days from the morning of one day to the morning of another; negative when backwards.
     *
     * @throws IllegalArgumentException when a day lies outside the span
     */
    public double between(LocalDate from, LocalDate to) {
        return sums[index(to)] - sums[index(from)];
    }

    /**
     * The first day at whose end this many degree-days have gone by since the morning of {@code
     * from}; empty when the span ends before.
     *
     * @param degreeDays at 0 or below, {@code from} itself
     * @throws IllegalArgumentException when {@code from} lies outside the span or the amount is NaN
     */
    public Optional<LocalDate> dayReaching(LocalDate from, double degreeDays) {
        if (Double.isNaN(degreeDays)) {
            throw new IllegalArgumentException("degree-days must be a number");
        }
        if (degreeDays <= 0) {
            return Optional.of(from);
        }
        int start = index(from);
        double wanted = sums[start] + degreeDays;
        int found = Arrays.binarySearch(sums, start, sums.length, wanted);
        int end = found >= 0 ? firstOf(found) : -found - 1;
        return end >= sums.length ? Optional.empty() : Optional.of(first.plusDays(end - 1L));
    }

    /** Rest days add nothing, so one sum may stand several times: the earliest counts. */
    private int firstOf(int found) {
        int index = found;
        while (index > 0 && sums[index - 1] == sums[found]) {
            index--;
        }
        return index;
    }

    private int index(LocalDate day) {
        long index = ChronoUnit.DAYS.between(first, day);
        if (index < 0 || index >= sums.length) {
            throw new IllegalArgumentException(
                    "%s lies outside %s to %s".formatted(day, first, lastDay()));
        }
        return (int) index;
    }
}
