package org.ripewood.core.growth;

import java.util.Comparator;
import java.util.List;

/**
 * When a wound's opening reaches a width, by Bayesian regression on growth-time.
 *
 * <p>The opening is {@code w = a − b x} with x the growth-time since the lips began to move and b
 * twice the rate of one lip: callus rolls in from both sides. a has a flat prior, b a normal one
 * cut off at 0 (a wound that is forecast closes), readings a known error. How long the lips rest at
 * first and by how much years differ is not known either: several of each are weighed by the
 * readings, see {@link SteadyRate}.
 *
 * <p>With a flat prior on b, no lag and years all alike the quantiles are the classical limits of
 * inverse regression (Fieller 1954, J. Royal Stat. Soc. B 16:175-185), as they have to be.
 *
 * <p>All growth-times count from the cut.
 */
public final class ClosureModel {

    /** Readings of one moment by width, so that the order they come in does not matter. */
    private static final Comparator<ClosureReading> BY_GROWTH_TIME =
            Comparator.comparingDouble(ClosureReading::growthTime)
                    .thenComparingDouble(ClosureReading::openMm);

    private final SteadyRate steady;

    private ClosureModel(SteadyRate steady) {
        this.steady = steady;
    }

    /**
     * Learns from readings.
     *
     * @param readings at least one, the width when made among them; in any order; those of one
     *     growth-time count as their mean, off by less
     * @throws IllegalArgumentException when there is none, or when one reading stands alone and the
     *     prior believes nothing
     */
    public static ClosureModel of(List<ClosureReading> readings, ClosurePrior prior) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("the width when the wound was made is needed");
        }
        // Two lips: twice the mean, twice the spread.
        var believed = new SeasonShare.Believed(2 * prior.rateMm(), 2 * prior.rateSdMm());
        return new ClosureModel(
                new SteadyRate(inOrder(readings, prior), believed, prior.seasons(), prior.lags()));
    }

    /** The readings along growth-time, whatever order they come in. */
    static Readings inOrder(List<ClosureReading> readings, ClosurePrior prior) {
        var rising = readings.stream().sorted(BY_GROWTH_TIME).toList();
        return Readings.of(
                rising.stream().mapToDouble(ClosureReading::growthTime).toArray(),
                rising.stream().mapToDouble(ClosureReading::openMm).toArray(),
                prior.measuringSdMm());
    }

    /**
     * The probability that the opening is at most this wide at a growth-time.
     *
     * @param growthTime since the cut
     * @param thresholdMm width asked for
     */
    public double probabilityBy(double growthTime, double thresholdMm) {
        return steady.probabilityAtMost(thresholdMm, Math.max(0, growthTime));
    }

    /**
     * The growth-time by which the opening has reached the width with this probability; infinite
     * when it may never, and 0 when it has from the start.
     *
     * @param probability above 0 and below 1
     */
    public double quantile(double probability, double thresholdMm) {
        requireProbability(probability);
        return steady.reaching(thresholdMm, probability);
    }

    /**
     * The opening that is not exceeded at a growth-time with this probability, mm, never below 0.
     *
     * @param probability above 0 and below 1
     */
    public double openMmAt(double growthTime, double probability) {
        requireProbability(probability);
        return Math.max(0, steady.widthAt(Math.max(0, growthTime), probability));
    }

    private static void requireProbability(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException(
                    "a probability lies between 0 and 1, found " + probability);
        }
    }
}
