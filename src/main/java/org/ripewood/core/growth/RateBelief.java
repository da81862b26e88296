package org.ripewood.core.growth;

import java.util.Collection;

/**
 * What is believed of a rate that differs from tree to tree: normal around an unknown mean with an
 * unknown spread (the normal–inverse-gamma family, which stays itself when it learns).
 *
 * @param meanMm believed mean, mm a year
 * @param weight how many trees' worth the mean is
 * @param shape shape of the variance; twice it is how many trees' worth the spread is
 * @param scale scale of the variance, mm²
 */
public record RateBelief(double meanMm, double weight, double shape, double scale) {

    /** A first belief counts as much as this many trees (common practice, no source). */
    private static final double FIRST_WEIGHT = 4;

    private static final double FIRST_SHAPE = 3;

    public RateBelief {
        if (!(meanMm > 0
                && Double.isFinite(meanMm)
                && weight > 0
                && Double.isFinite(weight)
                && shape > 1
                && Double.isFinite(shape)
                && scale > 0
                && Double.isFinite(scale))) {
            throw new IllegalArgumentException(
                    "mean, weight and scale must be above 0 and the shape above 1,"
                            + " found %s, %s, %s, %s".formatted(meanMm, weight, scale, shape));
        }
    }

    /** A first belief whose next tree is expected at this mean with this standard deviation. */
    public static RateBelief of(double meanMm, double sdMm) {
        double perScale = (FIRST_WEIGHT + 1) / FIRST_WEIGHT / (FIRST_SHAPE - 1);
        return new RateBelief(meanMm, FIRST_WEIGHT, FIRST_SHAPE, sdMm * sdMm / perScale);
    }

    /**
     * The belief after rates have been seen.
     *
     * <p>Formula, for n rates of mean ȳ and sum of squares S about it: weight κ + n; mean (κ m + n
     * ȳ) / (κ + n); shape α + n/2; scale β + S/2 + κ n (ȳ − m)² / (2 (κ + n)). Units: mm a year.
     * Edge cases: none seen, unchanged; the order does not matter, nor whether they come at once.
     * Errors: IllegalArgumentException for a rate below 0, NaN or infinite. Source: Hoff 2009, A
     * First Course in Bayesian Statistical Methods, ch. 5.
     */
    public RateBelief learn(Collection<Double> ratesMm) {
        int n = ratesMm.size();
        if (n == 0) {
            return this;
        }
        double mean = 0;
        for (double rate : ratesMm) {
            if (!(rate >= 0 && Double.isFinite(rate))) {
                throw new IllegalArgumentException("a rate must be 0 or more, found " + rate);
            }
            mean += rate / n;
        }
        double squares = 0;
        for (double rate : ratesMm) {
            squares += (rate - mean) * (rate - mean);
        }
        double off = mean - meanMm;
        return new RateBelief(
                (weight * meanMm + n * mean) / (weight + n),
                weight + n,
                shape + n / 2.0,
                scale + squares / 2 + weight * n * off * off / (2 * (weight + n)));
    }

    /**
     * Standard deviation of the next tree's rate: of Student's t with 2α degrees of freedom and
     * squared scale β (κ + 1) / (α κ), which is {@code √(β (κ + 1) / (κ (α − 1)))}.
     */
    public double sdMm() {
        return Math.sqrt(scale * (weight + 1) / weight / (shape - 1));
    }
}
