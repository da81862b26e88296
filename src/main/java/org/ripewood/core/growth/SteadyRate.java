package org.ripewood.core.growth;

import java.util.Arrays;

/**
 * A width that falls at a steady rate but for the seasons, learnt from readings of known error.
 *
 * <p>Without seasons it is {@code y = a − b x} with a flat prior on a and a normal one on b cut off
 * at 0. With them each year's rate strays from b by a share of it, in years gone by as in years to
 * come, so that the width ahead starts from where it was last seen and not from a line that it has
 * left. Most widths stray by the share given, some by twice and a few by four times as much (common
 * practice, no source): readings that left the line say which. b and the share are integrated over
 * numerically.
 */
final class SteadyRate {

    /**
     * How years differ.
     *
     * @param spread how far one year's rate strays, as a share of it; 0 for not at all
     * @param pace the rate by which what years gone by strayed is sized; neither the readings nor
     *     the belief about this width, so that a belief in a higher rate never leads to a lower one
     *     and quick years count as much as slow ones
     * @param year growth-time of a mean year
     */
    record Seasons(double spread, double pace, double year) {
        Seasons times(double times) {
            return new Seasons(times * spread, pace, year);
        }
    }

    private static final int RATES = 33;

    /** By how many times the share seasons may stray, and how likely that is believed. */
    private static final double[] TIMES = {1, 2, 4};

    private static final double[] BELIEVED = {0.7, 0.2, 0.1};

    private static final double REACH_SDS = 5;
    private static final double SURE_SDS = 8;

    /** Where the middle rate takes this many times as long, nothing is looked for. */
    private static final double FURTHEST = 1e5;

    private static final double EXACT_TO = 1e-5;
    private static final double TINY = 1e-15;

    private final double lastX;
    private final SeasonShare[] shares;
    private final double[] rates;
    private final double[] weights;

    /**
     * Learns from readings.
     *
     * @param x growth-times, at least one, rising
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
            Seasons seasons) {
        lastX = x[x.length - 1];
        double slope = slope(x, y);
        double unit = Math.max(priorRate, slope) > 0 ? Math.max(priorRate, slope) : 1;
        shares = new SeasonShare[seasons.spread() > 0 ? TIMES.length : 1];
        rates = new double[shares.length * RATES];
        weights = new double[rates.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = new SeasonShare(x, y, measuringSd, seasons.times(TIMES[i]), unit);
            layOut(i, priorRate, 1 / (priorRateSd * priorRateSd));
        }
        weigh(evidence());
    }

    /** How likely each share is, against the likeliest: their logarithms may lie far apart. */
    private double[] evidence() {
        var logs = Arrays.stream(shares).mapToDouble(SeasonShare::logEvidence).toArray();
        double most = Arrays.stream(logs).max().orElseThrow();
        var evidence = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            evidence[i] = BELIEVED[i] * Math.exp(logs[i] - most);
        }
        return evidence;
    }

    /** The least-squares rate, never below 0. */
    private static double slope(double[] x, double[] y) {
        double meanX = mean(x);
        double meanY = mean(y);
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < x.length; i++) {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
        }
        return sxx > 0 ? Math.max(0, -sxy / sxx) : 0;
    }

    /** Lays rates out over what a share leaves likely, and weighs them among each other. */
    private void layOut(int share, double priorRate, double priorPrecision) {
        double precision = priorPrecision + shares[share].precision();
        double rate = (priorPrecision * priorRate + shares[share].weighed()) / precision;
        double rateSd = 1 / Math.sqrt(precision);
        if (!Double.isFinite(rateSd)) {
            throw new IllegalArgumentException(
                    "one reading says nothing of the rate, and neither does the prior");
        }
        double low = Math.max(0, rate - REACH_SDS * rateSd);
        double high = Math.max(rate + REACH_SDS * rateSd, low + REACH_SDS * rateSd);
        // Far out on one side every weight may be too small for a double: take the first one's own.
        double first = low + (high - low) * 0.5 / RATES;
        double edge = rate < low ? (first - rate) / rateSd : 0;
        double total = 0;
        int from = share * RATES;
        for (int i = from; i < from + RATES; i++) {
            rates[i] = low + (high - low) * (i - from + 0.5) / RATES;
            double z = (rates[i] - rate) / rateSd;
            weights[i] = Math.exp((edge - z) * (edge + z) / 2);
            total += weights[i];
        }
        for (int i = from; i < from + RATES; i++) {
            weights[i] /= total;
        }
    }

    private void weigh(double[] evidence) {
        double total = 0;
        for (double one : evidence) {
            total += one;
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] *= evidence[i / RATES] / total;
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
        for (int i = 0; i < rates.length; i++) {
            mean += weights[i] * rates[i];
        }
        return mean;
    }

    /** Standard deviation of b, the cut at 0 regarded. */
    double rateSd() {
        double mean = rate();
        double variance = 0;
        for (int i = 0; i < rates.length; i++) {
            variance += weights[i] * (rates[i] - mean) * (rates[i] - mean);
        }
        return Math.sqrt(variance);
    }

    /** The probability that the width is at most {@code y} at {@code x}. */
    double probabilityAtMost(double y, double x) {
        double probability = 0;
        for (int i = 0; i < rates.length; i++) {
            var share = shares[i / RATES];
            double z = (y - share.levelAt(x, rates[i])) / share.sdAt(x, rates[i]);
            probability += weights[i] * NormalCurve.below(z);
        }
        // weights add up to 1 but for rounding
        return Math.min(1, probability);
    }

    /** The x by which the width has fallen to {@code y} with this probability, or infinity. */
    double reaching(double y, double probability) {
        if (probabilityAtMost(y, 0) >= probability) {
            return 0;
        }
        double low = 0;
        double high =
                Math.max(lastX, (shares[0].levelAt(0, rates[RATES / 2]) - y) / rates[RATES / 2]);
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
        for (int i = 0; i < rates.length; i++) {
            var share = shares[i / RATES];
            double middle = share.levelAt(x, rates[i]);
            double reach = SURE_SDS * share.sdAt(x, rates[i]);
            low = Math.min(low, middle - reach);
            high = Math.max(high, middle + reach);
        }
        double wanted = logOdds(probability);
        return Crossing.of(
                y -> logOdds(probabilityAtMost(y, x)) - wanted, low, high, EXACT_TO * (high - low));
    }
}
