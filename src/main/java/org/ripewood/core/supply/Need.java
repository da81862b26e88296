package org.ripewood.core.supply;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * Something wanted by a day.
 *
 * @param amount above 0
 * @param by the day it is used
 * @param forWhat such as a class and its trees
 */
public record Need(String item, BigDecimal amount, String unit, LocalDate by, String forWhat) {

    /**
     * @throws IllegalArgumentException when the amount is not above 0, or item or unit are blank
     */
    public Need {
        if (item.isBlank() || unit.isBlank() || amount.signum() <= 0) {
            throw new IllegalArgumentException(
                    "a need has an item, a unit and an amount above 0, found “%s”, %s “%s”"
                            .formatted(item, amount, unit));
        }
    }
}
