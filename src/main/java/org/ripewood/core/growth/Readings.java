package org.ripewood.core.growth;

import java.util.ArrayList;
import java.util.List;

/** Widths read along growth-time, in its order; what was read at one moment is one, their mean. */
final class Readings {

    private final double[] x;
    private final double[] y;
    private final double[] variances;

    private Readings(double[] x, double[] y, double[] variances) {
        this.x = x;
        this.y = y;
        this.variances = variances;
    }

    /**
     * Readings that are each off by the same, the mean of n at one moment by √n times less.
     *
     * @param x growth-times, at least one, rising
     * @param y as many
     */
    static Readings of(double[] x, double[] y, double measuringSd) {
        var starts = starts(x);
        int n = starts.size();
        var moments = new double[n];
        var means = new double[n];
        var variances = new double[n];
        for (int i = 0; i < n; i++) {
            int from = starts.get(i);
            int to = i + 1 < n ? starts.get(i + 1) : x.length;
            moments[i] = x[from];
            for (int j = from; j < to; j++) {
                means[i] += y[j] / (to - from);
            }
            variances[i] = measuringSd * measuringSd / (to - from);
        }
        return new Readings(moments, means, variances);
    }

    private static List<Integer> starts(double[] x) {
        var starts = new ArrayList<Integer>();
        for (int i = 0; i < x.length; i++) {
            if (i == 0 || x[i] > x[i - 1]) {
                starts.add(i);
            }
        }
        return starts;
    }

    /** The same as if nothing had grown beyond x. */
    Readings stoppedAt(double stop) {
        var stopped = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            stopped[i] = Math.min(stop, x[i]);
        }
        return new Readings(stopped, y, variances);
    }

    int size() {
        return x.length;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    double variance(int i) {
        return variances[i];
    }

    double lastX() {
        return x[x.length - 1];
    }
}
