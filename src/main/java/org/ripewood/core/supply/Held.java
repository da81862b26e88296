package org.ripewood.core.supply;

import java.math.BigDecimal;

/** What is in stock of an item. An amount below 0 is refused where it is reckoned with. */
public record Held(String item, BigDecimal amount, String unit) {

    public Held {
        if (item.isBlank() || unit.isBlank()) {
            throw new IllegalArgumentException(
                    "what is held has an item and a unit, found “%s” and “%s”"
                            .formatted(item, unit));
        }
    }
}
