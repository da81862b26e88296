package org.ripewood.sites;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Which daily readings a site has.
 *
 * @param first oldest day
 * @param last latest day
 * @param days how many days were read
 * @param missing how many between the first and the last were not
 */
public record ReadingsKnown(LocalDate first, LocalDate last, int days, long missing) {

    static ReadingsKnown of(LocalDate first, LocalDate last, int days) {
        return new ReadingsKnown(
                first, last, days, ChronoUnit.DAYS.between(first, last) + 1 - days);
    }
}
