package org.ripewood.core.route;

/**
 * How much the years, the recovery of a tree and the people at work differ from what is usual.
 *
 * @param seasonDays standard deviation of the days by which a year's seasons come early or late
 * @param recovery standard deviation of the logarithm of a tree's pace of recovery
 * @param missed chance that a step is not done in its window but in the next one, 0 to below 1
 * @param lateDays mean of the days from when a step could be done to when it is, 0 to 365
 */
public record Spread(double seasonDays, double recovery, double missed, double lateDays) {

    /** As if years were all alike and everything was done on its first day. */
    public static final Spread NONE = new Spread(0, 0, 0, 0);

    public Spread {
        require("seasonDays", seasonDays, 60);
        require("recovery", recovery, 1);
        require("missed", missed, 0.9);
        require("lateDays", lateDays, 365);
    }

    private static void require(String what, double amount, double most) {
        if (!(amount >= 0 && amount <= most)) {
            throw new IllegalArgumentException(
                    "%s runs from 0 to %s, found %s".formatted(what, most, amount));
        }
    }
}
