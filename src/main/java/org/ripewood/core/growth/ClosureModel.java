package org.ripewood.core.growth;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * When a wound's opening reaches a width, by Bayesian linear regression on growth-time.
 *
 * <p>The opening is {@code w = a − b x} with x the growth-time since the lips began to move and b
 * twice the rate of one lip: callus rolls in from both sides. a has a flat prior, b a normal one
 * cut off at 0 (a wound that is forecast closes), readings a known error. Given b, a is normal; b
 * is integrated over numerically, so that the cut at 0 is kept. Beyond the last reading the rate
 * may differ from the rate so far by the season's spread.
 *
 * <p>With a flat prior on b and no spread the quantiles are the classical limits of inverse
 * regression (Fieller 1954, J. Royal Stat. Soc. B 16:175-185), as they have to be.
 *
 * <p>All growth-times are degree-days since the cut.
 */
public final class ClosureModel {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final int NODES = 81;
    private static final double REACH_SDS = 6;
    private static final int MOST_STEPS = 60;
    private static final double EXACT_TO = 0.01;

    private final ClosurePrior prior;
    private final double lastX;
    private final double[] rates;
    private final double[] weights;
    private final double[] levels;
    private final double levelSd;

    private ClosureModel(
            ClosurePrior prior,
            double lastX,
            double[] rates,
            double[] weights,
            double[] levels,
            double levelSd) {
        this.prior = prior;
        this.lastX = lastX;
        this.rates = rates;
        this.weights = weights;
        this.levels = levels;
        this.levelSd = levelSd;
    }

    /**
     * Learns from readings.
     *
     * @param readings at least one, the width when made among them; in any order
     * @throws IllegalArgumentException when there is none
     */
    public static ClosureModel of(List<ClosureReading> readings, ClosurePrior prior) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("the width when the wound was made is needed");
        }
        double n = readings.size();
        double meanX = 0;
        double meanW = 0;
        double lastX = 0;
        for (var reading : readings) {
            double x = Math.max(0, reading.growthTime() - prior.lag());
            meanX += x / n;
            meanW += reading.openMm() / n;
            lastX = Math.max(lastX, x);
        }
        double sxx = 0;
        double sxw = 0;
        for (var reading : readings) {
            double x = Math.max(0, reading.growthTime() - prior.lag());
            sxx += (x - meanX) * (x - meanX);
            sxw += (x - meanX) * (reading.openMm() - meanW);
        }
        double variance = prior.measuringSdMm() * prior.measuringSdMm();
        // The rate of two lips: twice the mean, twice the spread.
        double priorPrecision = 1 / (4 * prior.rateSdMm() * prior.rateSdMm());
        double precision = priorPrecision + sxx / variance;
        double rate = (priorPrecision * 2 * prior.rateMm() - sxw / variance) / precision;
        double rateSd = 1 / Math.sqrt(precision);
        return grid(prior, lastX, rate, rateSd, meanX, meanW, prior.measuringSdMm() / Math.sqrt(n));
    }

    private static ClosureModel grid(
            ClosurePrior prior,
            double lastX,
            double rate,
            double rateSd,
            double meanX,
            double meanW,
            double levelSd) {
        if (!Double.isFinite(rateSd)) {
            throw new IllegalArgumentException(
                    "one reading says nothing of the rate, and neither does the prior");
        }
        double low = Math.max(0, rate - REACH_SDS * rateSd);
        double high = Math.max(rate + REACH_SDS * rateSd, low + REACH_SDS * rateSd);
        var rates = new double[NODES];
        var weights = new double[NODES];
        var levels = new double[NODES];
        double total = 0;
        for (int i = 0; i < NODES; i++) {
            rates[i] = low + (high - low) * (i + 0.5) / NODES;
            double z = (rates[i] - rate) / rateSd;
            weights[i] = Math.exp(-z * z / 2);
            levels[i] = meanW + rates[i] * meanX;
            total += weights[i];
        }
        for (int i = 0; i < NODES; i++) {
            weights[i] /= total;
        }
        return new ClosureModel(prior, lastX, rates, weights, levels, levelSd);
    }

    /**
     * The probability that the opening is at most this wide at a growth-time.
     *
     * @param growthTime degree-days since the cut
     * @param thresholdMm width asked for
     */
    public double probabilityBy(double growthTime, double thresholdMm) {
        double x = Math.max(0, growthTime - prior.lag());
        double ahead = Math.max(0, x - lastX);
        double probability = 0;
        for (int i = 0; i < NODES; i++) {
            double spread = prior.seasonSpread() * rates[i] * ahead;
            double sd = Math.hypot(levelSd, spread);
            double z = (thresholdMm - levels[i] + rates[i] * x) / sd;
            probability += weights[i] * STANDARD.cumulativeProbability(z);
        }
        return probability;
    }

    /**
     * The growth-time by which the opening has reached the width with this probability; infinite
     * when it may never, and 0 when it has from the start.
     *
     * @param probability above 0 and below 1
     */
    public double quantile(double probability, double thresholdMm) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1");
        }
        if (probabilityBy(0, thresholdMm) >= probability) {
            return 0;
        }
        double high = 1_000;
        while (probabilityBy(high, thresholdMm) < probability) {
            high *= 2;
            if (high > 1e7) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return crossing(probability, thresholdMm, high);
    }

    /**
     * Where the probability is reached, below {@code high}: false position with Illinois' halving.
     */
    private double crossing(double probability, double thresholdMm, double high) {
        double low = 0;
        double below = probabilityBy(low, thresholdMm) - probability;
        double above = probabilityBy(high, thresholdMm) - probability;
        for (int i = 0; i < MOST_STEPS && high - low > EXACT_TO; i++) {
            double middle = (low * above - high * below) / (above - below);
            double there = probabilityBy(middle, thresholdMm) - probability;
            if (Math.abs(there) < 1e-9) {
                return middle;
            }
            if (there < 0) {
                low = middle;
                below = there;
                above /= 2;
            } else {
                high = middle;
                above = there;
                below /= 2;
            }
        }
        return high;
    }
}
