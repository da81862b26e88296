package org.ripewood.core.supply;

/** American Wire Gauge and millimetres. */
public final class Gauge {

    /** Gauge 36 in mm, 0.005 inch. */
    private static final double MM_OF_36 = 0.127;

    /** Gauge 0000 is 92 times as thick as gauge 36, in 39 equal steps. */
    private static final double RATIO = 92;

    private static final double STEPS = 39;

    /** Gauge 0000, the thickest; 00 and 000 are −1 and −2. */
    public static final int THICKEST = -3;

    public static final int THINNEST = 40;

    private Gauge() {}

    /**
     * Thickness of a gauge, mm.
     *
     * <p>Formula: {@code 0.127 · 92^((36 − n)/39)}. Source: ASTM B258.
     *
     * @throws IllegalArgumentException outside −3 (0000) to 40
     */
    public static double mm(int awg) {
        if (awg < THICKEST || awg > THINNEST) {
            throw new IllegalArgumentException("a gauge is -3 (0000) to 40, found " + awg);
        }
        return MM_OF_36 * Math.pow(RATIO, (36 - awg) / STEPS);
    }

    /**
     * The gauge of a thickness, mostly no whole number.
     *
     * <p>Formula: {@code 36 − 39 · ln(d/0.127)/ln 92}.
     *
     * @throws IllegalArgumentException unless the thickness is above 0 and finite
     */
    public static double awg(double wireMm) {
        requireMm(wireMm);
        return 36 - STEPS * Math.log(wireMm / MM_OF_36) / Math.log(RATIO);
    }

    static void requireMm(double wireMm) {
        if (!(wireMm > 0 && wireMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a wire is thicker than 0 mm, found " + wireMm);
        }
    }
}
