package org.ripewood.core.supply;

/**
 * A lift with two hands by one person, at its start or at its end.
 *
 * @param horizontalCm from between the ankles to the hands
 * @param verticalCm of the hands above the floor
 * @param travelCm height the load is raised or lowered by
 * @param asymmetryDegrees how far the body is twisted
 * @param frequencyMultiplier for lifts that come often, 0 to 1, by the table of the publication
 */
public record Lift(
        double horizontalCm,
        double verticalCm,
        double travelCm,
        double asymmetryDegrees,
        double frequencyMultiplier,
        Coupling coupling) {

    /** Up to one lift in five minutes, for an hour at most (from memory). */
    public static final double NOW_AND_THEN = 1;

    private static final double LOAD_CONSTANT_KG = 23;
    private static final double NEAREST_CM = 25;
    private static final double FARTHEST_CM = 63;
    private static final double KNUCKLES_CM = 75;
    private static final double HIGHEST_CM = 175;
    private static final double SHORTEST_CM = 25;
    private static final double MOST_TWIST = 135;

    /**
     * @throws IllegalArgumentException when a value is negative or not finite, or the multiplier is
     *     above 1
     */
    public Lift {
        if (!(horizontalCm >= 0
                && verticalCm >= 0
                && travelCm >= 0
                && asymmetryDegrees >= 0
                && horizontalCm + verticalCm + travelCm + asymmetryDegrees
                        < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "expected lengths in cm and an angle of 0 and up, found %s, %s, %s and %s"
                            .formatted(horizontalCm, verticalCm, travelCm, asymmetryDegrees));
        }
        if (!(frequencyMultiplier >= 0 && frequencyMultiplier <= 1)) {
            throw new IllegalArgumentException(
                    "a multiplier is 0 to 1, found " + frequencyMultiplier);
        }
    }

    /**
     * Recommended weight limit, kg.
     *
     * <p>Formula: {@code 23 · 25/H · (1 − 0.003 |V − 75|) · (0.82 + 4.5/D) · (1 − 0.0032 A) · F ·
     * C}, where H below 25 counts as 25 and D below 25 as 25. Edge cases: 0 where the equation does
     * not reach: H above 63, V above 175, D above 175 cm, A above 135°. Limits: for two hands, a
     * sound footing, no seat and no wheelbarrow; for a lift put down with care take the lower limit
     * of start and end. Source: NIOSH publication 94-110, revised September 2021.
     */
    public double recommendedKg() {
        if (horizontalCm > FARTHEST_CM
                || verticalCm > HIGHEST_CM
                || travelCm > HIGHEST_CM
                || asymmetryDegrees > MOST_TWIST) {
            return 0;
        }
        return LOAD_CONSTANT_KG
                * NEAREST_CM
                / Math.max(NEAREST_CM, horizontalCm)
                * (1 - 0.003 * Math.abs(verticalCm - KNUCKLES_CM))
                * (0.82 + 4.5 / Math.max(SHORTEST_CM, travelCm))
                * (1 - 0.0032 * asymmetryDegrees)
                * frequencyMultiplier
                * coupling.multiplier(verticalCm);
    }

    /**
     * What is advised for a weight.
     *
     * @throws IllegalArgumentException unless the weight is above 0 and finite
     */
    public LiftAdvice advice(double kg) {
        return LiftAdvice.of(kg, recommendedKg());
    }
}
