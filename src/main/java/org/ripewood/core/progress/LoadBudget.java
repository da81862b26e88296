package org.ripewood.core.progress;

/**
 * How much load a tree of some vigour may carry at once.
 *
 * <p>{@code budget = 5 + 0.12 (vigour − 50)}, held between 2 and 8: a strong tree (75) may carry 8,
 * a middling one (50) 5, a weak one (25 and below) 2. Common practice, no source.
 */
public final class LoadBudget {

    /** No tree may carry more at once. */
    static final double MOST = 8;

    private static final double LEAST = 2;
    private static final double MIDDLE = 5;
    private static final double MIDDLING_VIGOUR = 50;
    private static final double PER_VIGOUR = 0.12;

    private LoadBudget() {}

    /**
     * The most load in stress units.
     *
     * @param vigourIndex 0 to 100; NaN gives NaN
     */
    public static double of(double vigourIndex) {
        double load = MIDDLE + PER_VIGOUR * (vigourIndex - MIDDLING_VIGOUR);
        return Math.max(LEAST, Math.min(MOST, load));
    }

    /**
     * The least vigour that may carry a load, 0 to 100.
     *
     * @param load up to {@link #MOST}
     */
    public static double vigourFor(double load) {
        return load <= LEAST ? 0 : MIDDLING_VIGOUR + (load - MIDDLE) / PER_VIGOUR;
    }
}
