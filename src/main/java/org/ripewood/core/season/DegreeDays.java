package org.ripewood.core.season;

/**
 * Degree-days of one day from its lowest and highest temperature.
 *
 * <p>Temperatures and thresholds are in one scale, °C or °F; the result is in that scale's degrees
 * times days. A day whose minimum lies above its maximum, or that is not a number, is refused.
 */
public final class DegreeDays {

    /** As an upper threshold: none. */
    public static final double NO_UPPER = Double.POSITIVE_INFINITY;

    private DegreeDays() {}

    /**
     * Single sine with a horizontal cutoff: the area under a sine between minimum and maximum that
     * lies above the lower threshold and not above the upper one.
     *
     * <p>With M the middle and A half the span, the area above h is M − h when the whole day is
     * warmer, 0 when none of it is, and else {@code ((M−h)(π/2−t) + A cos t)/π} with {@code t =
     * asin((h−M)/A)}; the result is area(lower) − area(upper).
     *
     * <p>Source: Baskerville and Emin 1969, Ecology 50:514-517; horizontal cutoff as in Zalom et
     * al. 1983, University of California leaflet 21373.
     *
     * @param upper above {@code lower}, or {@link #NO_UPPER}
     * @throws IllegalArgumentException when {@code min > max}, {@code upper <= lower} or one is NaN
     */
    public static double singleSine(double min, double max, double lower, double upper) {
        require(min, max, lower, upper);
        return sineAbove(min, max, lower) - sineAbove(min, max, upper);
    }

    /**
     * Simple average: the middle of the day above the lower threshold, for checks.
     *
     * @throws IllegalArgumentException when {@code min > max} or one is NaN
     */
    public static double simpleAverage(double min, double max, double lower) {
        require(min, max, lower, NO_UPPER);
        return Math.max(0, (min + max) / 2 - lower);
    }

    private static double sineAbove(double min, double max, double threshold) {
        if (max <= threshold) {
            return 0;
        }
        double middle = (min + max) / 2;
        if (min >= threshold) {
            return middle - threshold;
        }
        double half = (max - min) / 2;
        double phase = Math.asin((threshold - middle) / half);
        return ((middle - threshold) * (Math.PI / 2 - phase) + half * Math.cos(phase)) / Math.PI;
    }

    private static void require(double min, double max, double lower, double upper) {
        if (!(Double.isFinite(min) && Double.isFinite(max) && min <= max)) {
            throw new IllegalArgumentException(
                    "a day needs a minimum not above its maximum, found %s and %s"
                            .formatted(min, max));
        }
        if (!(Double.isFinite(lower) && upper > lower)) {
            throw new IllegalArgumentException(
                    "the upper threshold must lie above the lower, found %s and %s"
                            .formatted(upper, lower));
        }
    }
}
