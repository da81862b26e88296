package org.ripewood.core.season;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * A normal year made of a site's own daily readings.
 *
 * <p>Each month's mean minimum and maximum are the plain means of all its days that were read, in
 * whatever year. The scatter is that of the days' middles (minimum and maximum halved) around the
 * smooth year, root of the mean square. One year of readings makes a normal year of that one year's
 * weather: usable, but no climate normal, which takes 30 years.
 */
public final class ReadingsNormal {

    private static final int MONTHS = 12;

    /** Days a year needs, so that a few lost days do not matter. Common practice, no source. */
    static final int MIN_DAYS = 330;

    /** Days each month needs. Common practice, no source. */
    static final int MIN_DAYS_A_MONTH = 15;

    private ReadingsNormal() {}

    /** Whether the readings are enough: 330 days in all, at least 15 in each month. */
    public static boolean enough(Collection<DayReading> readings) {
        var days = daysPerMonth(readings);
        return readings.size() >= MIN_DAYS && leastOf(days) >= MIN_DAYS_A_MONTH;
    }

    /**
     * The normal year of the readings.
     *
     * @throws IllegalArgumentException when they are not {@link #enough}
     */
    public static NormalYear of(Collection<DayReading> readings) {
        var days = daysPerMonth(readings);
        if (!enough(readings)) {
            throw new IllegalArgumentException(
                    "readings of a year are needed, at least %d days and %d in each month; found %d days, %d in the poorest month"
                            .formatted(MIN_DAYS, MIN_DAYS_A_MONTH, readings.size(), leastOf(days)));
        }
        var minima = new double[MONTHS];
        var maxima = new double[MONTHS];
        for (var reading : readings) {
            int month = reading.day().getMonthValue() - 1;
            minima[month] += reading.minCelsius() / days[month];
            maxima[month] += reading.maxCelsius() / days[month];
        }
        var smooth = NormalYear.of(boxed(minima), boxed(maxima));
        return smooth.withScatter(scatter(smooth, readings));
    }

    private static double scatter(NormalYear smooth, Collection<DayReading> readings) {
        double squares = 0;
        for (var reading : readings) {
            var day = reading.day();
            double usual = (smooth.minCelsius(day) + smooth.maxCelsius(day)) / 2;
            double found = (reading.minCelsius() + reading.maxCelsius()) / 2;
            squares += (found - usual) * (found - usual);
        }
        return Math.sqrt(squares / readings.size());
    }

    private static int[] daysPerMonth(Collection<DayReading> readings) {
        var days = new int[MONTHS];
        readings.forEach(reading -> days[reading.day().getMonthValue() - 1]++);
        return days;
    }

    private static int leastOf(int[] days) {
        int least = Integer.MAX_VALUE;
        for (int count : days) {
            least = Math.min(least, count);
        }
        return least;
    }

    private static List<Double> boxed(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }
}
