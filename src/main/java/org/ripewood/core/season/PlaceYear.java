package org.ripewood.core.season;

import java.time.LocalDate;

/**
 * What the usual year of a place says of a day, beside the growth stage: how cold it is, whether
 * winter comes at all, and how much warm season is left. Every year is alike.
 */
public interface PlaceYear {

    /** Days before the cold comes, and after it has gone, for which shelter is there already. */
    int SHELTER_AROUND_DAYS = 14;

    /** Nights are as cold as a bound only when colder by more than this. */
    double NIGHTS_TOLERANCE_CELSIUS = 0.5;

    /** So many growing days are left where no frost comes. */
    int NO_FROST = 366;

    /** A place of which nothing is known: no work is held back for its weather. */
    PlaceYear ANY =
            new PlaceYear() {
                @Override
                public boolean withoutWinter() {
                    return false;
                }

                @Override
                public boolean coolestWeeks(LocalDate day) {
                    return false;
                }

                @Override
                public int growingDaysLeft(LocalDate day) {
                    return NO_FROST;
                }

                @Override
                public double minCelsius(LocalDate day) {
                    return Double.NaN;
                }

                @Override
                public double maxCelsius(LocalDate day) {
                    return Double.NaN;
                }

                @Override
                public boolean nightsBelow(double celsius, LocalDate day) {
                    return true;
                }
            };

    /** Whether no winter comes that would bring trees of any kind to rest. */
    boolean withoutWinter();

    /** Whether the day lies in the twelve coolest weeks of the year. */
    boolean coolestWeeks(LocalDate day);

    /**
     * Days of growth from this day to the frost of the autumn that comes next; {@link #NO_FROST}
     * where none comes. A frost in spring ends nothing, since summer is still ahead.
     */
    int growingDaysLeft(LocalDate day);

    /** The usual daily minimum in °C. */
    double minCelsius(LocalDate day);

    /** The usual daily maximum in °C. */
    double maxCelsius(LocalDate day);

    /** Whether wood is usually frozen by day: the daily maximum lies below 0 °C. */
    default boolean woodFrozen(LocalDate day) {
        return maxCelsius(day) < 0;
    }

    /** Whether root balls in containers are usually frozen: the daily mean lies below 0 °C. */
    default boolean ballFrozen(LocalDate day) {
        return (minCelsius(day) + maxCelsius(day)) / 2 < 0;
    }

    /**
     * Whether the usual nights are colder than this by over half a degree, now or within {@link
     * #SHELTER_AROUND_DAYS} before or after.
     */
    default boolean nightsBelow(double celsius, LocalDate day) {
        for (int off = -SHELTER_AROUND_DAYS; off <= SHELTER_AROUND_DAYS; off++) {
            if (minCelsius(day.plusDays(off)) < celsius - NIGHTS_TOLERANCE_CELSIUS) {
                return true;
            }
        }
        return false;
    }
}
