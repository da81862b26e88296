package org.ripewood.life;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts in the words of a tree's life. */
final class LifeWords {

    private LifeWords() {}

    /** One decimal at most. */
    static String number(double amount) {
        return BigDecimal.valueOf(amount)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    static String mm(double amount) {
        return number(amount) + " mm";
    }
}
