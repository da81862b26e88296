package org.ripewood.platform.problems;

import java.lang.reflect.Array;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What was found, as a message shows it: short, on one line, and never a secret. */
public final class Found {

    private static final int MOST_CHARACTERS = 40;

    private Found() {}

    /** A text in quotation marks, cut short and with its control characters made visible. */
    public static String text(String text) {
        var shown = text.strip().replaceAll("[\\p{Cc}\\p{Cf}\\p{Cn}\\p{Cs}\\p{Zl}\\p{Zp}]", "·");
        if (shown.codePointCount(0, shown.length()) > MOST_CHARACTERS) {
            shown = shown.substring(0, shown.offsetByCodePoints(0, MOST_CHARACTERS)) + "…";
        }
        return '"' + shown + '"';
    }

    /** The value of a field; of a password only that there was one. */
    static String value(String field, @Nullable Object value) {
        if (value == null) {
            return "nothing";
        }
        if (isSecret(field)) {
            return "something else";
        }
        if (value instanceof Double number
                && Double.isFinite(number)
                && number == Math.rint(number)) {
            // as it was typed: 99999 is no 99999.0
            return BigDecimal.valueOf(number).toBigInteger().toString();
        }
        return value instanceof Number || value instanceof Boolean
                ? value.toString()
                : text(value.toString());
    }

    /** How long a text or how full a collection is. */
    static String size(@Nullable Object value) {
        if (value instanceof CharSequence text) {
            return Integer.toString(text.length());
        }
        if (value instanceof Collection<?> several) {
            return Integer.toString(several.size());
        }
        if (value instanceof Map<?, ?> map) {
            return Integer.toString(map.size());
        }
        return value != null && value.getClass().isArray()
                ? Integer.toString(Array.getLength(value))
                : "nothing";
    }

    /** Whether the field holds what nobody else may read. */
    static boolean isSecret(String field) {
        return field.toLowerCase(Locale.ROOT).endsWith("password") || field.equals("setUpCode");
    }
}
