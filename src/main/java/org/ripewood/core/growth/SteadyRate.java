package org.ripewood.core.growth;

/**
 * A width that falls at a steady rate, {@code y = a − b x}, learnt from readings of known error: a
 * flat prior on a, a normal one on b cut off at 0. Given b, a is normal; b is integrated over
 * numerically, so that the cut at 0 is kept. Beyond the last reading the rate may differ from the
 * rate so far by the season's spread.
 */
final class SteadyRate {

    private static final int NODES = 49;
    private static final double REACH_SDS = 5;
    private static final double SURE_SDS = 8;

    /** Where the middle rate takes this many times as long, nothing is looked for. */
    private static final double FURTHEST = 1e5;

    private static final double EXACT_TO = 1e-5;
    private static final double TINY = 1e-15;

    private final double seasonSpread;
    private final double lastX;
    private final double[] rates = new double[NODES];
    private final double[] weights = new double[NODES];
    private final double[] levels = new double[NODES];
    private final double levelSd;
    private final double rate;
    private final double rateSd;

    /**
     * Learns from readings.
     *
     * @param x growth-times, at least one
     * @param y widths read there
     * @param priorRate believed b, with its standard deviation (infinite for no belief)
     * @throws IllegalArgumentException when neither readings nor belief say anything of b
     */
    SteadyRate(
            double[] x,
            double[] y,
            double priorRate,
            double priorRateSd,
            double measuringSd,
            double seasonSpread) {
        double meanX = mean(x);
        double meanY = mean(y);
        double sxx = 0;
        double sxy = 0;
        double last = 0;
        for (int i = 0; i < x.length; i++) {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
            last = Math.max(last, x[i]);
        }
        double variance = measuringSd * measuringSd;
        double priorPrecision = 1 / (priorRateSd * priorRateSd);
        double precision = priorPrecision + sxx / variance;
        this.rate = (priorPrecision * priorRate - sxy / variance) / precision;
        this.rateSd = 1 / Math.sqrt(precision);
        if (!Double.isFinite(rateSd)) {
            throw new IllegalArgumentException(
                    "one reading says nothing of the rate, and neither does the prior");
        }
        this.seasonSpread = seasonSpread;
        this.lastX = last;
        this.levelSd = measuringSd / Math.sqrt(x.length);
        spread(meanX, meanY);
    }

    private void spread(double meanX, double meanY) {
        double low = Math.max(0, rate - REACH_SDS * rateSd);
        double high = Math.max(rate + REACH_SDS * rateSd, low + REACH_SDS * rateSd);
        double total = 0;
        for (int i = 0; i < NODES; i++) {
            rates[i] = low + (high - low) * (i + 0.5) / NODES;
            double z = (rates[i] - rate) / rateSd;
            // Far out on one side every weight may be too small for a double: take the edge's own.
            double edge = Math.max(0, (low - rate) / rateSd);
            weights[i] = Math.exp((edge * edge - z * z) / 2);
            levels[i] = meanY + rates[i] * meanX;
            total += weights[i];
        }
        for (int i = 0; i < NODES; i++) {
            weights[i] /= total;
        }
    }

    private static double mean(double[] values) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        return mean;
    }

    /** Mean of b, the cut at 0 regarded. */
    double rate() {
        double mean = 0;
        for (int i = 0; i < NODES; i++) {
            mean += weights[i] * rates[i];
        }
        return mean;
    }

    /** Standard deviation of b, the cut at 0 regarded. */
    double rateSd() {
        double mean = rate();
        double variance = 0;
        for (int i = 0; i < NODES; i++) {
            variance += weights[i] * (rates[i] - mean) * (rates[i] - mean);
        }
        return Math.sqrt(variance);
    }

    /** The probability that the width is at most {@code y} at {@code x}. */
    double probabilityAtMost(double y, double x) {
        double ahead = Math.max(0, x - lastX) * seasonSpread;
        double probability = 0;
        for (int i = 0; i < NODES; i++) {
            double further = rates[i] * ahead;
            // Not Math.hypot: this runs thousands of times, and nothing here over- or underflows.
            double sd = Math.sqrt(levelSd * levelSd + further * further);
            probability += weights[i] * NormalCurve.below((y - levels[i] + rates[i] * x) / sd);
        }
        return probability;
    }

    /** The x by which the width has fallen to {@code y} with this probability, or infinity. */
    double reaching(double y, double probability) {
        if (probabilityAtMost(y, 0) >= probability) {
            return 0;
        }
        double low = 0;
        double high = Math.max(lastX, (levels[NODES / 2] - y) / rates[NODES / 2]);
        double furthest = FURTHEST * high;
        while (probabilityAtMost(y, high) < probability) {
            low = high;
            high *= 2;
            if (!(high < furthest)) {
                return Double.POSITIVE_INFINITY;
            }
        }
        // In log-odds the way is nearly straight, so that few steps find it.
        double wanted = logOdds(probability);
        return Crossing.of(
                x -> logOdds(probabilityAtMost(y, x)) - wanted, low, high, EXACT_TO * high);
    }

    private static double logOdds(double probability) {
        double held = Math.max(TINY, Math.min(1 - TINY, probability));
        return Math.log(held / (1 - held));
    }

    /** The width that is not exceeded at {@code x} with this probability. */
    double widthAt(double x, double probability) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double ahead = Math.max(0, x - lastX) * seasonSpread;
        for (int i = 0; i < NODES; i++) {
            double middle = levels[i] - rates[i] * x;
            double reach = SURE_SDS * Math.hypot(levelSd, rates[i] * ahead);
            low = Math.min(low, middle - reach);
            high = Math.max(high, middle + reach);
        }
        double wanted = logOdds(probability);
        return Crossing.of(
                y -> logOdds(probabilityAtMost(y, x)) - wanted, low, high, EXACT_TO * (high - low));
    }
}
