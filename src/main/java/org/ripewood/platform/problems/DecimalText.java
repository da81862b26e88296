package org.ripewood.platform.problems;

import java.util.regex.Pattern;

/** Numbers as people write them: with a decimal point, or with a decimal comma. */
public final class DecimalText {

    private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d{0,15},\\d{1,15}");

    /** Three digits after a comma: thousands to one reader, a fraction to another. */
    private static final Pattern TWO_READINGS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

    private DecimalText() {}

    /** The text with a point for its decimal comma; unchanged when it has none or none for sure. */
    public static String withPoint(String text) {
        return WITH_COMMA.matcher(text).matches() && !TWO_READINGS.matcher(text).matches()
                ? text.replace(',', '.')
                : text;
    }

    /** What may have been meant by a comma that can be read in two ways; empty otherwise. */
    public static String maybe(String text) {
        return TWO_READINGS.matcher(text).matches()
                ? " Maybe “%s” or “%s”.".formatted(text.replace(",", ""), text.replace(',', '.'))
                : "";
    }
}
