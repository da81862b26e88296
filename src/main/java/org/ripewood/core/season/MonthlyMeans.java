package org.ripewood.core.season;

import java.time.Year;
import java.util.List;

/**
 * Daily values from twelve monthly means, such that each month's days have that mean again.
 *
 * <p>Straight lines run between knots at mid-month, round the year; the knots are not the means
 * themselves but are solved for, twelve equations in twelve unknowns, so that the mean over the
 * days of each month is the one given. Straight lines through the means themselves would cut off
 * summer and winter. Idea: Killworth 1996, Journal of Physical Oceanography 26:136-143 (from
 * memory).
 */
public final class MonthlyMeans {

    private static final int MONTHS = 12;

    private final double[] common;
    private final double[] leap;

    private MonthlyMeans(double[] common, double[] leap) {
        this.common = common;
        this.leap = leap;
    }

    /**
     * Solves for the daily values.
     *
     * @param means twelve finite values, January first, in any unit
     * @throws IllegalArgumentException when there are not twelve, or one is not finite
     */
    public static MonthlyMeans of(List<Double> means) {
        if (means.size() != MONTHS || !means.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException(
                    "twelve finite monthly means are needed, found " + means);
        }
        var given = means.stream().mapToDouble(Double::doubleValue).toArray();
        return new MonthlyMeans(daily(given, 2023), daily(given, 2024));
    }

    /**
     * The value of a day.
     *
     * @param year decides whether the year has a 29 February
     * @param dayOfYear from 1
     */
    public double on(int year, int dayOfYear) {
        return (Year.isLeap(year) ? leap : common)[dayOfYear - 1];
    }

    private static double[] daily(double[] means, int year) {
        int days = Year.of(year).length();
        var weights = weights(year, days);
        var system = new double[MONTHS][MONTHS + 1];
        int day = 0;
        for (int month = 0; month < MONTHS; month++) {
            int length = Year.of(year).atMonth(month + 1).lengthOfMonth();
            for (int end = day + length; day < end; day++) {
                for (int knot = 0; knot < MONTHS; knot++) {
                    system[month][knot] += weights[day][knot] / length;
                }
            }
            system[month][MONTHS] = means[month];
        }
        var knots = solve(system);
        var values = new double[days];
        for (int i = 0; i < days; i++) {
            for (int knot = 0; knot < MONTHS; knot++) {
                values[i] += weights[i][knot] * knots[knot];
            }
        }
        return values;
    }

    /** How much each knot counts on each day: two neighbours share every day. */
    private static double[][] weights(int year, int days) {
        var middles = new double[MONTHS];
        int start = 0;
        for (int month = 0; month < MONTHS; month++) {
            int length = Year.of(year).atMonth(month + 1).lengthOfMonth();
            middles[month] = start + length / 2.0;
            start += length;
        }
        var weights = new double[days][MONTHS];
        for (int day = 0; day < days; day++) {
            double noon = day + 0.5;
            int before = MONTHS - 1;
            while (before > 0 && middles[before] > noon) {
                before--;
            }
            if (middles[before] > noon) {
                before = MONTHS - 1;
            }
            int after = (before + 1) % MONTHS;
            double span =
                    Math.floorMod((int) (2 * (middles[after] - middles[before])), 2 * days) / 2.0;
            double into = (noon - middles[before] + days) % days;
            weights[day][after] = into / span;
            weights[day][before] += 1 - into / span;
        }
        return weights;
    }

    /** Gauss with the largest pivot; the system is well conditioned, its diagonal outweighs. */
    private static double[] solve(double[][] system) {
        for (int column = 0; column < MONTHS; column++) {
            int best = column;
            for (int row = column + 1; row < MONTHS; row++) {
                if (Math.abs(system[row][column]) > Math.abs(system[best][column])) {
                    best = row;
                }
            }
            var pivot = system[best];
            system[best] = system[column];
            system[column] = pivot;
            for (int row = 0; row < MONTHS; row++) {
                if (row != column) {
                    double factor = system[row][column] / pivot[column];
                    for (int k = column; k <= MONTHS; k++) {
                        system[row][k] -= factor * pivot[k];
                    }
                }
            }
        }
        var solution = new double[MONTHS];
        for (int row = 0; row < MONTHS; row++) {
            solution[row] = system[row][MONTHS] / system[row][row];
        }
        return solution;
    }
}
