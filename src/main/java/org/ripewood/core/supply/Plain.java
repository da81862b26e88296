package org.ripewood.core.supply;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people write them. */
final class Plain {

    private Plain() {}

    /** Whole millimetres, as nobody measures a root ball or a container finer. */
    static String mm(double value) {
        return number(Math.rint(value));
    }

    /** No more than two decimals, no trailing zeros, no exponent. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.isNaN(value) ? "no number" : "an endless number";
        }
        var rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
