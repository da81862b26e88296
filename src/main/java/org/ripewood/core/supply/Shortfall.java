package org.ripewood.core.supply;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;

/**
 * What has to be bought by a day.
 *
 * @param amount short on that day, beyond what was short on the days before
 * @param forWhat what it is needed for that day, in alphabetical order
 */
public record Shortfall(
        String item, BigDecimal amount, String unit, LocalDate by, List<String> forWhat) {

    public Shortfall {
        forWhat = List.copyOf(forWhat);
    }
}
