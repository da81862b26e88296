package org.ripewood.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The units lengths are shown in. */
public enum Units {
    METRIC("mm", 1, 1, "°C·d", 1),
    US("in", 25.4, 2, "°F·d", 1.8);

    /** Beyond this a number is shown as this. */
    private static final double MOST = 1e12;

    private final String word;
    private final double mmEach;
    private final int decimals;
    private final String degreeDayWord;
    private final double degreeDaysEach;

    Units(String word, double mmEach, int decimals, String degreeDayWord, double degreeDaysEach) {
        this.degreeDayWord = degreeDayWord;
        this.degreeDaysEach = degreeDaysEach;
        this.word = word;
        this.mmEach = mmEach;
        this.decimals = decimals;
    }

    String word() {
        return word;
    }

    double mmEach() {
        return mmEach;
    }

    /** A length without its unit. */
    String bare(double mm) {
        return plain(mm / mmEach, decimals);
    }

    /** A number with one decimal at most. */
    static String plain(double value) {
        return plain(value, 1);
    }

    static String whole(double value) {
        return plain(value, 0);
    }

    private static String plain(double value, int decimals) {
        double shown = Math.abs(value) < MOST ? value : Math.signum(value) * MOST;
        var rounded = BigDecimal.valueOf(shown).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Degree-days Celsius as they are shown. */
    double degreeDays(double celsius) {
        return celsius * degreeDaysEach;
    }

    String degreeDayWord() {
        return degreeDayWord;
    }

    /** A length with its unit. */
    String length(double mm) {
        return bare(mm) + " " + word;
    }
}
