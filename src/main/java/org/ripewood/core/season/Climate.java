package org.ripewood.core.season;

/**
 * What a place gives a tree: its latitude, which sets the length of the day, and its temperatures.
 *
 * @param latitudeDegrees −90 to 90, south negative
 * @param temperatures of every day, past and to come
 */
public record Climate(double latitudeDegrees, DayTemperatures temperatures) {

    public Climate {
        if (!(Math.abs(latitudeDegrees) <= 90)) {
            throw new IllegalArgumentException(
                    "latitude must lie between -90 and 90, found " + latitudeDegrees);
        }
    }
}
