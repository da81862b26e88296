package org.ripewood.core.route;

import java.time.LocalDate;
import org.ripewood.core.season.Outlook;

/**
 * Time that has to go by after another step before this one: a year in the new container, a new
 * wound to close.
 *
 * <p>Lags of one key share one random number in each draw. Between the tenths a lag follows a
 * normal curve on either side of the likely length, as {@code Outlook.Expected} does, and is never
 * less than nothing.
 *
 * @param after code of the step it runs from; that step then comes first, as if it stood in {@code
 *     after}
 * @param key names what is waited for; also the name of the random number
 * @param earliestDays reached in one case of ten, 0 or more
 * @param likelyDays reached in every second case
 * @param latestDays reached in nine cases of ten, at most {@link #LONGEST_DAYS}
 */
public record Lag(String after, String key, int earliestDays, int likelyDays, int latestDays) {

    /** A century; keeps sums of days far from overflow. */
    public static final int LONGEST_DAYS = 36_600;

    public Lag {
        RouteStep.requireName("after", after);
        RouteStep.requireName("key", key);
        if (!(earliestDays >= 0
                && earliestDays <= likelyDays
                && likelyDays <= latestDays
                && latestDays <= LONGEST_DAYS)) {
            throw new IllegalArgumentException(
                    "a lag's days run 0 <= earliest <= likely <= latest <= %d, found %d, %d, %d"
                            .formatted(LONGEST_DAYS, earliestDays, likelyDays, latestDays));
        }
    }

    /** A lag that is sure. */
    public static Lag sure(String after, String key, int days) {
        return new Lag(after, key, days, days, days);
    }

    /** When it is over, run from a day. */
    Outlook since(LocalDate day) {
        return new Outlook.Expected(
                day.plusDays(earliestDays), day.plusDays(likelyDays), day.plusDays(latestDays));
    }

    /** Its length where the normal curve stands {@code z} standard deviations from the middle. */
    int days(double z) {
        double side = z < 0 ? likelyDays - earliestDays : latestDays - likelyDays;
        return (int) Math.max(0, Math.round(likelyDays + z / Chance.Z_OF_NINE_IN_TEN * side));
    }
}
