package org.ripewood.api.kit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.problems.RecordDays;
import org.ripewood.platform.problems.Refused;

/** What a caller asks for in the query of a URL, read by hand so that a slip is named. */
public final class Asked {

    private static final int ROWS_UNLESS_ASKED = 50;
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,6}(\\.[0-9]{1,6})?");
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,18}");

    private Asked() {}

    public static @Nullable LocalDate dayIfAny(String field, @Nullable String text) {
        return text == null ? null : day(field, text, RecordDays.FIRST);
    }

    public static LocalDate day(String field, @Nullable String text, LocalDate otherwise) {
        if (text == null) {
            return otherwise;
        }
        var day = DAY.matcher(text).matches() ? parseDay(text) : null;
        if (day == null || !RecordDays.holds(day)) {
            throw Refused.invalid(
                    field,
                    "expected a day such as 2026-04-30 between %s and %s, found \"%s\""
                            .formatted(RecordDays.FIRST, RecordDays.LAST, Excerpt.of(text)));
        }
        return day;
    }

    public static PageRequest page(@Nullable String page, @Nullable String size) {
        return new PageRequest(whole("page", page, 0), whole("size", size, ROWS_UNLESS_ASKED));
    }

    public static @Nullable Long id(String field, @Nullable String text) {
        return text == null ? null : Long.valueOf(number(field, text));
    }

    public static @Nullable Integer year(String field, @Nullable String text) {
        return text == null ? null : Integer.valueOf(whole(field, text, 0));
    }

    public static double number(String field, @Nullable String text, double otherwise) {
        if (text == null) {
            return otherwise;
        }
        if (!DECIMAL.matcher(text).matches()) {
            throw Refused.invalid(
                    field,
                    "expected a number such as 5 or 7.5, found \"%s\"".formatted(Excerpt.of(text)));
        }
        return Double.parseDouble(text);
    }

    public static <E extends Enum<E>> @Nullable E oneOf(
            String field, @Nullable String text, Class<E> words) {
        if (text == null) {
            return null;
        }
        for (var word : words.getEnumConstants()) {
            if (word.name().equals(text.toUpperCase(Locale.ROOT))) {
                return word;
            }
        }
        var known =
                Arrays.stream(words.getEnumConstants())
                        .map(Enum::name)
                        .collect(Collectors.joining(", "));
        throw Refused.invalid(
                field, "expected one of %s, found \"%s\"".formatted(known, Excerpt.of(text)));
    }

    /** Whether something is asked for; it is not unless said. */
    public static boolean yes(String field, @Nullable String text) {
        if (text == null || text.equals("false")) {
            return false;
        }
        if (!text.equals("true")) {
            throw Refused.invalid(
                    field, "expected true or false, found \"%s\"".formatted(Excerpt.of(text)));
        }
        return true;
    }

    public static int whole(String field, @Nullable String text, int otherwise) {
        return text == null
                ? otherwise
                : (int)
                        Math.max(
                                Integer.MIN_VALUE,
                                Math.min(Integer.MAX_VALUE, number(field, text)));
    }

    private static long number(String field, String text) {
        if (!WHOLE.matcher(text).matches()) {
            throw Refused.invalid(
                    field, "expected a whole number, found \"%s\"".formatted(Excerpt.of(text)));
        }
        return Long.parseLong(text);
    }

    private static @Nullable LocalDate parseDay(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException noSuchDay) {
            return null;
        }
    }
}
