package org.ripewood.core.route;

import java.time.LocalDate;
import org.ripewood.core.season.Outlook;

/**
 * How many growing seasons something takes; one is counted as a year.
 *
 * @param low so few in one case of ten, 0 or more
 * @param usual so many in every second case
 * @param high so many in nine cases of ten, at most {@value #MOST}
 */
public record Seasons(double low, double usual, double high) {

    /** Nothing is told that far ahead. */
    public static final int MOST = 60;

    private static final double DAYS = 365.25;

    /** What is not there yet still takes this share of its time, however long it has gone on. */
    private static final double LEAST_LEFT = 0.25;

    public Seasons {
        if (!(low >= 0 && low <= usual && usual <= high && high <= MOST)) {
            throw new IllegalArgumentException(
                    "seasons run 0 <= low <= usual <= high <= %d, found %s, %s, %s"
                            .formatted(MOST, low, usual, high));
        }
    }

    /** So many times as long, as far as can be told. */
    Seasons times(double count) {
        return new Seasons(
                Math.min(MOST, low * count),
                Math.min(MOST, usual * count),
                Math.min(MOST, high * count));
    }

    Lag after(String step, String key) {
        return new Lag(step, key, days(low), days(usual), days(high));
    }

    /** When it is over, seen from a day on which it has gone on for so long and is not over. */
    Outlook from(LocalDate day, long gone) {
        return new Outlook.Expected(
                day.plusDays(left(low, gone)),
                day.plusDays(left(usual, gone)),
                day.plusDays(left(high, gone)));
    }

    private static long left(double seasons, long gone) {
        return Math.round(Math.max(days(seasons) - (double) gone, LEAST_LEFT * days(seasons)));
    }

    private static int days(double seasons) {
        return (int) Math.round(seasons * DAYS);
    }
}
