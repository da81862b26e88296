package org.ripewood.core.season;

import java.time.LocalDate;

/**
 * The lowest and highest temperature somebody measured on one day.
 *
 * @param minCelsius −90 to 60, not above the maximum
 * @param maxCelsius −90 to 60
 */
public record DayReading(LocalDate day, double minCelsius, double maxCelsius) {

    /** Just below the lowest temperature measured near the ground on earth, −89.2 °C. */
    public static final double LOWEST_CELSIUS = -90;

    /** Just above the highest, 56.7 °C. Both from memory. */
    public static final double HIGHEST_CELSIUS = 60;

    public DayReading {
        if (!(minCelsius >= LOWEST_CELSIUS
                && minCelsius <= maxCelsius
                && maxCelsius <= HIGHEST_CELSIUS)) {
            throw new IllegalArgumentException(
                    "on %s a minimum of -90 °C or more and a maximum of 60 °C or less are needed, the minimum not above the maximum, found %s and %s"
                            .formatted(day, minCelsius, maxCelsius));
        }
    }
}
