package org.ripewood.core.growth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * A trunk's diameter at marked heights, lowest first.
 *
 * @param readings one for a height; any order in, sorted out
 */
public record TaperProfile(List<Reading> readings) {

    /** What a calliper may be off by at least, in nine readings of ten. */
    public static final double LEAST_ERROR_MM = 0.5;

    /** What a calliper may be off by as a share of the diameter, in nine readings of ten. */
    public static final double ERROR_SHARE = 0.03;

    /** Standard deviations within which nine of ten readings lie, both sides taken together. */
    private static final double SDS_OF_NINE_IN_TEN = 1.6448536269514722;

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /** A diameter at a height above the root flare. */
    public record Reading(double heightMm, double diameterMm) {
        public Reading {
            if (!(heightMm >= 0 && heightMm < Double.POSITIVE_INFINITY)
                    || !(diameterMm >= 0 && diameterMm < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "height and diameter are not negative, found %s and %s"
                                .formatted(heightMm, diameterMm));
            }
        }
    }

    /**
     * A place where the trunk is thicker than below.
     *
     * @param narrow the narrowest reading below it
     * @param wide the first reading that is thicker than that by more than the error
     */
    public record Bulge(Reading narrow, Reading wide) {

        /** By how much it is thicker, mm. */
        public double excessMm() {
            return wide.diameterMm() - narrow.diameterMm();
        }

        /**
         * How sure it is that the trunk is thicker there at all, 0.95 to 1.
         *
         * <p>Formula: {@code Φ(excess / √(s₁² + s₂²))}, s the {@link #errorMm} over 1.645. Limits:
         * taken for these two marks alone; among many marks some pair is far apart by chance.
         */
        public double certainty() {
            return STANDARD.cumulativeProbability(
                    SDS_OF_NINE_IN_TEN * excessMm() / combinedErrorMm(narrow, wide));
        }
    }

    /**
     * @throws IllegalArgumentException when a height comes twice
     */
    public TaperProfile {
        readings = readings.stream().sorted(Comparator.comparingDouble(Reading::heightMm)).toList();
        for (int i = 1; i < readings.size(); i++) {
            if (readings.get(i).heightMm() == readings.get(i - 1).heightMm()) {
                throw new IllegalArgumentException(
                        "two diameters at " + readings.get(i).heightMm() + " mm");
            }
        }
    }

    /**
     * What a calliper may be off by at a diameter in nine readings of ten: 0.5 mm or 3 %, whichever
     * is more.
     */
    public static double errorMm(double diameterMm) {
        return Math.max(LEAST_ERROR_MM, ERROR_SHARE * diameterMm);
    }

    /** What the difference of two readings may be off by on one side in 19 cases of 20. */
    private static double combinedErrorMm(Reading low, Reading high) {
        return Math.hypot(errorMm(low.diameterMm()), errorMm(high.diameterMm()));
    }

    /**
     * Places of reverse taper, lowest first.
     *
     * <p>Formula: going up, a reading is too thick when it exceeds the narrowest reading below it
     * by more than the errors of both together, {@code √(e₁² + e₂²)} with e the {@link #errorMm}
     * (1.645 standard deviations of the difference); readings in a row that are too thick are one
     * bulge. Measured against the narrowest and not only against the next, so that a trunk that
     * swells by a little at each mark is found, and noise is not.
     *
     * <p>Shapes and units: millimetres. Edge cases: fewer than two readings, no bulge; an excess of
     * exactly the error, no bulge. Limits: what lies between two marks is not seen. Source of the
     * error: common practice, no source.
     */
    public List<Bulge> bulges() {
        var bulges = new ArrayList<Bulge>();
        if (readings.isEmpty()) {
            return bulges;
        }
        var narrowest = readings.get(0);
        boolean inside = false;
        for (var reading : readings) {
            boolean tooThick =
                    reading.diameterMm() - narrowest.diameterMm()
                            > combinedErrorMm(narrowest, reading);
            if (tooThick && !inside) {
                bulges.add(new Bulge(narrowest, reading));
            }
            inside = tooThick;
            if (reading.diameterMm() < narrowest.diameterMm()) {
                narrowest = reading;
            }
        }
        return bulges;
    }

    /**
     * Taper of each segment between two marks, lowest first: {@code (lower − upper) / length}.
     *
     * <p>Shapes and units: one value fewer than readings, mm per mm; negative where the trunk
     * widens. Edge cases: empty for fewer than two readings. Source: the forester's definition of
     * taper as change of diameter over length.
     */
    public List<Double> tapers() {
        var tapers = new ArrayList<Double>();
        for (int i = 1; i < readings.size(); i++) {
            var low = readings.get(i - 1);
            var high = readings.get(i);
            tapers.add((low.diameterMm() - high.diameterMm()) / (high.heightMm() - low.heightMm()));
        }
        return tapers;
    }
}
