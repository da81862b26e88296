package org.ripewood.core.season;

/**
 * Hours between sunrise and sunset, the upper limb of the sun on the horizon.
 *
 * <p>The CBM model: {@code P = asin(0.39795 cos(0.2163108 + 2 atan(0.9671396 tan(0.00860 (J −
 * 186)))))}, {@code D = 24 − 24/π acos((sin 0.8333° + sin L sin P) / (cos L cos P))}. Within and
 * beyond the polar circles the argument is held to −1 to 1, so that it gives 24 or 0 hours. Autumn
 * days come out up to five minutes long.
 *
 * <p>Source: Forsythe et al. 1995, Ecological Modelling 80:87-95.
 */
public final class DayLength {

    private static final double SUN_BELOW_HORIZON = Math.toRadians(0.8333);

    private DayLength() {}

    /**
     * Hours of day, 0 to 24.
     *
     * @param latitudeDegrees −90 to 90, south negative
     * @param dayOfYear 1 to 366
     * @throws IllegalArgumentException outside of these
     */
    public static double hours(double latitudeDegrees, int dayOfYear) {
        if (!(Math.abs(latitudeDegrees) <= 90)) {
            throw new IllegalArgumentException(
                    "latitude must lie between -90 and 90, found " + latitudeDegrees);
        }
        if (dayOfYear < 1 || dayOfYear > 366) {
            throw new IllegalArgumentException(
                    "day of the year must lie between 1 and 366, found " + dayOfYear);
        }
        double declination = declination(dayOfYear);
        double latitude = Math.toRadians(latitudeDegrees);
        double cosine =
                (Math.sin(SUN_BELOW_HORIZON) + Math.sin(latitude) * Math.sin(declination))
                        / (Math.cos(latitude) * Math.cos(declination));
        return 24 - 24 / Math.PI * Math.acos(Math.max(-1, Math.min(1, cosine)));
    }

    /** The sun's declination in radians. */
    static double declination(int dayOfYear) {
        double revolution =
                0.2163108 + 2 * Math.atan(0.9671396 * Math.tan(0.00860 * (dayOfYear - 186)));
        return Math.asin(0.39795 * Math.cos(revolution));
    }
}
