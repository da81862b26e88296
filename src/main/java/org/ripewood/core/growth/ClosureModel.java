package org.ripewood.core.growth;

import java.util.Comparator;
import java.util.List;

/**
 * When a wound's opening reaches a width, by Bayesian linear regression on growth-time.
 *
 * <p>The opening is {@code w = a − b x} with x the growth-time since the lips began to move and b
 * twice the rate of one lip: callus rolls in from both sides. a has a flat prior, b a normal one
 * cut off at 0 (a wound that is forecast closes), readings a known error. Beyond the last reading
 * the rate may differ from the rate so far by the season's spread.
 *
 * <p>With a flat prior on b and no spread the quantiles are the classical limits of inverse
 * regression (Fieller 1954, J. Royal Stat. Soc. B 16:175-185), as they have to be.
 *
 * <p>All growth-times count from the cut.
 */
public final class ClosureModel {

    /** Readings of one moment by width, so that the order they come in does not matter. */
    private static final Comparator<ClosureReading> BY_GROWTH_TIME =
            Comparator.comparingDouble(ClosureReading::growthTime)
                    .thenComparingDouble(ClosureReading::openMm);

    private final double lag;
    private final SteadyRate steady;

    private ClosureModel(double lag, SteadyRate steady) {
        this.lag = lag;
        this.steady = steady;
    }

    /**
     * Learns from readings.
     *
     * @param readings at least one, the width when made among them; in any order
     * @throws IllegalArgumentException when there is none, or when one reading stands alone and the
     *     prior believes nothing
     */
    public static ClosureModel of(List<ClosureReading> readings, ClosurePrior prior) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("the width when the wound was made is needed");
        }
        var x = new double[readings.size()];
        var openMm = new double[readings.size()];
        var rising = readings.stream().sorted(BY_GROWTH_TIME).toList();
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.max(0, rising.get(i).growthTime() - prior.lag());
            openMm[i] = rising.get(i).openMm();
        }
        // Two lips: twice the mean, twice the spread.
        return new ClosureModel(
                prior.lag(),
                new SteadyRate(
                        x,
                        openMm,
                        2 * prior.rateMm(),
                        2 * prior.rateSdMm(),
                        prior.measuringSdMm(),
                        new SteadyRate.Seasons(
                                prior.seasonSpread(), 2 * prior.paceMm(), prior.year())));
    }

    /**
     * The probability that the opening is at most this wide at a growth-time.
     *
     * @param growthTime since the cut
     * @param thresholdMm width asked for
     */
    public double probabilityBy(double growthTime, double thresholdMm) {
        return steady.probabilityAtMost(thresholdMm, moved(growthTime));
    }

    /**
     * The growth-time by which the opening has reached the width with this probability; infinite
     * when it may never, and 0 when it has from the start.
     *
     * @param probability above 0 and below 1
     */
    public double quantile(double probability, double thresholdMm) {
        requireProbability(probability);
        double x = steady.reaching(thresholdMm, probability);
        return x == 0 ? 0 : x + lag;
    }

    /**
     * The opening that is not exceeded at a growth-time with this probability, mm, never below 0.
     *
     * @param probability above 0 and below 1
     */
    public double openMmAt(double growthTime, double probability) {
        requireProbability(probability);
        return Math.max(0, steady.widthAt(moved(growthTime), probability));
    }

    private double moved(double growthTime) {
        return Math.max(0, growthTime - lag);
    }

    private static void requireProbability(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException(
                    "a probability lies between 0 and 1, found " + probability);
        }
    }
}
