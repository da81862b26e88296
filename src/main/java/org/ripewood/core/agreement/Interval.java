package org.ripewood.core.agreement;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A confidence interval of a coefficient.
 *
 * @param confidence share of such intervals that hold the true value, 0.5 to below 1
 */
public record Interval(double lower, double upper, double confidence) {

    /** The confidence mostly asked for. */
    public static final double USUAL_CONFIDENCE = 0.95;

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    /**
     * @throws IllegalArgumentException when a bound is not finite, the bounds are the wrong way
     *     round or the confidence is below 0.5 or not below 1
     */
    public Interval {
        requireConfidence(confidence);
        if (!(lower <= upper && Double.isFinite(lower) && Double.isFinite(upper))) {
            throw new IllegalArgumentException(
                    "expected finite bounds, lower first, found %s and %s".formatted(lower, upper));
        }
    }

    /** The usual large-sample one, cut off at 1, which no coefficient of agreement exceeds. */
    static Interval around(double value, double standardError, double confidence) {
        requireConfidence(confidence);
        double reach = standardError * NORMAL.inverseSurvivalProbability((1 - confidence) / 2);
        return new Interval(value - reach, Math.min(1, value + reach), confidence);
    }

    /** Below 0.5 the F-based intervals need not hold the estimate itself. */
    static void requireConfidence(double confidence) {
        if (!(confidence >= 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "a confidence lies from 0.5 to below 1, found " + confidence);
        }
    }

    public boolean contains(double value) {
        return lower <= value && value <= upper;
    }

    public double width() {
        return upper - lower;
    }
}
