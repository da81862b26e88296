package org.ripewood.core.progress;

/**
 * How much load a tree of some vigour may carry at once.
 *
 * <p>{@code budget = 5 + 0.12 (vigour − 50)}, held between 2 and 8: a strong tree (75) may carry 8,
 * a middling one (50) 5, a weak one (25 and below) 2. Common practice, no source.
 */
public final class LoadBudget {

    private LoadBudget() {}

    /**
     * The most load in stress units.
     *
     * @param vigourIndex 0 to 100; NaN gives NaN
     */
    public static double of(double vigourIndex) {
        return Math.max(2, Math.min(8, 5 + 0.12 * (vigourIndex - 50)));
    }
}
