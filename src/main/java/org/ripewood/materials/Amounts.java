package org.ripewood.materials;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.ripewood.platform.problems.Refused;

/** Amounts as they are typed, kept and told. */
final class Amounts {

    /** A gram of wire and a millilitre of anything can be told apart. */
    private static final int DECIMALS = 3;

    private Amounts() {}

    /** Without zeros at its end and without an exponent. */
    static BigDecimal plain(BigDecimal amount) {
        var stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /**
     * What was typed, to the thousandth.
     *
     * @throws Refused 400 when it is finer than that, or only whole ones can be counted
     */
    static BigDecimal typed(StockItemEntity item, double amount) {
        var exact = BigDecimal.valueOf(amount);
        var kept = exact.setScale(DECIMALS, RoundingMode.HALF_UP);
        if (kept.compareTo(exact) != 0) {
            throw Refused.invalid(
                    "amount",
                    "expected three decimals at most, found " + plain(exact).toPlainString());
        }
        if (item.kind.whole() && kept.stripTrailingZeros().scale() > 0) {
            throw Refused.invalid(
                    "amount",
                    "expected a whole number of pieces, found " + plain(kept).toPlainString());
        }
        return kept;
    }
}
