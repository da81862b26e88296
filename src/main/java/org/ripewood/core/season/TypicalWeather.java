package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.Year;

/**
 * The usual year of a place, from its temperatures: for each day of the year the mean over all its
 * years and over 31 days around it.
 *
 * <p>No winter comes where the usual night of the coldest time is not below 15 °C, with a tolerance
 * of 0.2; or where the daily mean differs by less than 6 °C round the year and nights are usually
 * not below 5 °C, as in tropical highlands. Frost is to be reckoned with from the day in autumn on
 * which the usual night is below 5 °C: where nights scatter by 2.8 to 4 °C one frost has come by
 * then, or a week or two later, in every second year. Days with a mean of at least 10 °C before it
 * are days of growth. The bounds are common practice, no source.
 */
final class TypicalWeather implements PlaceYear {

    /** Nights of the coldest time from which no tree rests; 15 °C with a tolerance. */
    static final double NO_REST_MINIMUM_CELSIUS = 14.8;

    private static final double EVEN_YEAR_CELSIUS = 6;
    private static final double FROSTLESS_MINIMUM_CELSIUS = 4.8;
    private static final double FROST_NEAR_CELSIUS = 5;
    private static final double TROPICAL_GROWTH_CELSIUS = 17.5;
    private static final double GROWTH_MEAN_CELSIUS = 10;

    /** Below such a range the year has no coolest time of its own; then midwinter counts. */
    private static final double FLAT_YEAR_CELSIUS = 0.5;

    private static final int DAYS = 366;
    private static final int LEAP_DAY = 59;
    private static final int SMOOTH_DAYS = 15;
    private static final int COOLEST_AROUND_DAYS = 42;
    private static final int MIDWINTER_NORTH = 355;
    private static final int MIDWINTER_SOUTH = 172;

    private final double[] minima;
    private final double[] maxima;
    private final int[] growingDays;
    private final boolean[] warmAhead;
    private final int coolest;
    private final boolean withoutWinter;

    private TypicalWeather(double[] minima, double[] maxima, double latitude) {
        this.minima = minima;
        this.maxima = maxima;
        var means = new double[DAYS];
        int cold = 0;
        int warm = 0;
        double coldestNight = Double.POSITIVE_INFINITY;
        for (int i = 0; i < DAYS; i++) {
            means[i] = (minima[i] + maxima[i]) / 2;
            cold = means[i] < means[cold] ? i : cold;
            warm = means[i] > means[warm] ? i : warm;
            coldestNight = Math.min(coldestNight, minima[i]);
        }
        double range = means[warm] - means[cold];
        int midwinter = latitude < 0 ? MIDWINTER_SOUTH : MIDWINTER_NORTH;
        this.coolest = range < FLAT_YEAR_CELSIUS ? midwinter : cold;
        this.withoutWinter =
                coldestNight >= NO_REST_MINIMUM_CELSIUS
                        || (range < EVEN_YEAR_CELSIUS && coldestNight >= FROSTLESS_MINIMUM_CELSIUS);
        this.growingDays = growingDays(means, warm);
        this.warmAhead = warmAhead(means);
    }

    /**
     * The usual year over the days of a span.
     *
     * @param first first day of a span of at least a year
     */
    static TypicalWeather of(Climate climate, LocalDate first, LocalDate last) {
        var minima = new double[DAYS];
        var maxima = new double[DAYS];
        var counted = new int[DAYS];
        var temperatures = climate.temperatures();
        for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
            int slot = slot(day);
            minima[slot] += temperatures.minCelsius(day);
            maxima[slot] += temperatures.maxCelsius(day);
            counted[slot]++;
        }
        return new TypicalWeather(
                smooth(means(minima, counted)),
                smooth(means(maxima, counted)),
                climate.latitudeDegrees());
    }

    /** Mean of each day of the year; a leap day that the span does not hold is like its eve. */
    private static double[] means(double[] sums, int[] counted) {
        var means = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            means[i] = counted[i] == 0 ? means[Math.max(0, i - 1)] : sums[i] / counted[i];
        }
        return means;
    }

    private static double[] smooth(double[] values) {
        var smooth = new double[DAYS];
        for (int i = 0; i < DAYS; i++) {
            double sum = 0;
            for (int off = -SMOOTH_DAYS; off <= SMOOTH_DAYS; off++) {
                sum += values[Math.floorMod(i + off, DAYS)];
            }
            smooth[i] = sum / (2 * SMOOTH_DAYS + 1);
        }
        return smooth;
    }

    /** Counted back from the coolest day, with which the falling half of the year ends. */
    private int[] growingDays(double[] means, int warmest) {
        var left = new int[DAYS];
        int falling = Math.floorMod(coolest - warmest, DAYS);
        boolean frost = false;
        for (int back = 0; back <= falling; back++) {
            frost |= minima[Math.floorMod(coolest - back, DAYS)] < FROST_NEAR_CELSIUS;
        }
        int days = frost ? 0 : NO_FROST;
        for (int back = 0; back < DAYS; back++) {
            int slot = Math.floorMod(coolest - back, DAYS);
            boolean cold = minima[slot] < FROST_NEAR_CELSIUS;
            if (frost && cold && back <= falling) {
                days = 0;
            } else if (frost && !cold && means[slot] >= GROWTH_MEAN_CELSIUS) {
                days++;
            }
            left[slot] = days;
        }
        return left;
    }

    private boolean[] warmAhead(double[] means) {
        var ahead = new boolean[DAYS];
        boolean warm = false;
        for (int back = 0; back < DAYS; back++) {
            int slot = Math.floorMod(coolest - back, DAYS);
            warm |= means[slot] >= TROPICAL_GROWTH_CELSIUS;
            ahead[slot] = warm;
        }
        return ahead;
    }

    /** A day's place in a year of 366 days. */
    private static int slot(LocalDate day) {
        int slot = day.getDayOfYear() - 1;
        return slot >= LEAP_DAY && !Year.isLeap(day.getYear()) ? slot + 1 : slot;
    }

    @Override
    public boolean withoutWinter() {
        return withoutWinter;
    }

    @Override
    public boolean coolestWeeks(LocalDate day) {
        int off = Math.floorMod(slot(day) - coolest, DAYS);
        return Math.min(off, DAYS - off) <= COOLEST_AROUND_DAYS;
    }

    /** Days from a day to the coolest of the year, 0 to 365. */
    int daysToCoolest(LocalDate day) {
        return Math.floorMod(coolest - slot(day), DAYS);
    }

    @Override
    public int growingDaysLeft(LocalDate day) {
        return growingDays[slot(day)];
    }

    @Override
    public double minCelsius(LocalDate day) {
        return minima[slot(day)];
    }

    @Override
    public double maxCelsius(LocalDate day) {
        return maxima[slot(day)];
    }

    /** Whether it is usually warm enough for tropical kinds to grow: about 18 °C by the mean. */
    boolean tropicalGrowth(LocalDate day) {
        return (minCelsius(day) + maxCelsius(day)) / 2 >= TROPICAL_GROWTH_CELSIUS;
    }

    /** Whether it is, or will be before the coolest day of the year comes round. */
    boolean tropicalGrowthAhead(LocalDate day) {
        return warmAhead[slot(day)];
    }
}
