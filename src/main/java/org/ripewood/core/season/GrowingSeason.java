package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.Month;

/**
 * The year a tree's doses are counted in: from midwinter to midwinter.
 *
 * <p>North of the equator it is the calendar year, south of it the year from 1 July. Doses add up
 * over it and one heavy work is allowed in it (common practice, no source).
 *
 * @param firstDay its first day; the last is the day before the next one's first
 */
public record GrowingSeason(LocalDate firstDay) {

    /**
     * The growing season that holds a day.
     *
     * @param latitudeDegrees −90 to 90, south negative; the equator counts as north
     */
    public static GrowingSeason of(LocalDate day, double latitudeDegrees) {
        if (latitudeDegrees >= 0) {
            return new GrowingSeason(day.withDayOfYear(1));
        }
        var midwinter = LocalDate.of(day.getYear(), Month.JULY, 1);
        return new GrowingSeason(day.isBefore(midwinter) ? midwinter.minusYears(1) : midwinter);
    }

    /** Whether a day lies in this season. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(firstDay) && day.isBefore(firstDay.plusYears(1));
    }
}
