package org.ripewood.core.supply;

/** How well hands hold what they lift, in the terms of the lifting equation. */
public enum Coupling {
    GOOD,
    FAIR,
    POOR;

    private static final double LOW_CM = 75;

    /** Multiplier of the equation; source: NIOSH publication 94-110 (from memory). */
    double multiplier(double verticalCm) {
        return switch (this) {
            case GOOD -> 1;
            case FAIR -> verticalCm < LOW_CM ? 0.95 : 1;
            case POOR -> 0.9;
        };
    }
}
