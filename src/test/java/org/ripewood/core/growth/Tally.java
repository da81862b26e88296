package org.ripewood.core.growth;

import java.util.Arrays;
import java.util.Locale;

/** How forecasts of 10, 50 and 90 % did against what came about, growth-times all. */
final class Tally {

    private final double[] errors;
    private int covered;
    private int early;
    private int seen;

    Tally(int most) {
        errors = new double[most];
    }

    void add(double truth, double low, double middle, double high) {
        if (low <= truth && truth <= high) {
            covered++;
        }
        if (truth < middle) {
            early++;
        }
        errors[seen++] = Double.isFinite(truth) ? (middle - truth) / truth : -1;
    }

    int seen() {
        return seen;
    }

    double coverage() {
        return (double) covered / seen;
    }

    /** Share of truths below the median forecast: one half when it is a median. */
    double below() {
        return (double) early / seen;
    }

    /**
     * How far the median forecast lies from what came about, the middle of all cases, as a share of
     * it. Not the mean: a tree that all but stands still takes any number of years.
     */
    double bias() {
        return middle(Arrays.copyOf(errors, seen));
    }

    /** The error that half the forecasts keep below, as a share of what came about. */
    double medianError() {
        return middle(Arrays.stream(errors, 0, seen).map(Math::abs).toArray());
    }

    private static double middle(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }

    String line(int readings) {
        return String.format(
                Locale.ROOT,
                "%8d %10.1f %15.1f %8.1f %14.1f\n",
                readings,
                100 * coverage(),
                100 * below(),
                100 * bias(),
                100 * medianError());
    }

    static String head(String what) {
        return String.format(
                Locale.ROOT,
                "%s\n%8s %10s %15s %8s %14s\n",
                what,
                "readings",
                "covered %",
                "below median %",
                "bias %",
                "half within %");
    }
}
