package org.ripewood.platform.problems;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How a text becomes a value.
 *
 * @param expected what a reader is told to send
 * @param absent what no text at all means; null when the field may be left out
 * @param parse throws {@link IllegalArgumentException} or {@link DateTimeParseException} for a text
 *     that is not of the type
 */
record FieldType(String expected, @Nullable Object absent, Function<String, Object> parse) {

    static FieldType of(Class<?> type) {
        if (type == String.class) {
            // browsers send line ends as CR LF
            return new FieldType("a text", null, text -> text.replace("\r\n", "\n"));
        }
        if (type == boolean.class || type == Boolean.class) {
            return new FieldType(
                    "yes or no", type == boolean.class ? Boolean.FALSE : null, FieldType::flag);
        }
        if (type == int.class || type == Integer.class) {
            return new FieldType(
                    "a whole number", type == int.class ? (Object) 0 : null, Integer::valueOf);
        }
        if (type == long.class || type == Long.class) {
            return new FieldType(
                    "a whole number", type == long.class ? (Object) 0L : null, Long::valueOf);
        }
        if (type == double.class || type == Double.class) {
            return new FieldType(
                    "a number such as 12.5",
                    type == double.class ? (Object) 0.0 : null,
                    FieldType::number);
        }
        if (type == LocalDate.class) {
            return new FieldType("a day such as 2024-03-31", null, LocalDate::parse);
        }
        if (type == LocalTime.class) {
            return new FieldType("a time such as 09:30", null, LocalTime::parse);
        }
        if (type.isEnum()) {
            return new FieldType("one of " + words(type), null, text -> constant(type, text));
        }
        throw new IllegalArgumentException("no form field can say a " + type);
    }

    /** The value, or null and a fault when the text is not of the type. */
    @Nullable Object read(String field, String text, List<Fault> faults) {
        // blanks around a password are part of it
        var typed = Found.isSecret(field) ? text : text.strip();
        try {
            var value = parse.apply(typed);
            if (value instanceof LocalDate day) {
                RecordDays.faultOf(day).ifPresent(fault -> faults.add(new Fault(field, fault)));
            }
            return value;
        } catch (IllegalArgumentException | DateTimeParseException e) {
            faults.add(
                    new Fault(
                            field,
                            "expected %s, found %s%s"
                                    .formatted(
                                            expected,
                                            Found.value(field, typed),
                                            maybe(field, typed))));
            return absent;
        }
    }

    /** What a field left out means; a fault when the record cannot do without. */
    @Nullable Object ofNothing(String field, List<Fault> faults) {
        if (absent instanceof Number) {
            faults.add(new Fault(field, "expected %s, found nothing".formatted(expected)));
        }
        return absent;
    }

    private String maybe(String field, String typed) {
        return expected.startsWith("a number") && !Found.isSecret(field)
                ? DecimalText.maybe(typed).replaceFirst("^ ", ". ")
                : "";
    }

    private static Object flag(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "true", "yes", "on" -> true;
            case "false", "no", "off" -> false;
            default -> throw new IllegalArgumentException("neither yes nor no");
        };
    }

    /** Only what a person would call a number: not NaN, not infinite, no hexadecimal, no suffix. */
    private static Object number(String typed) {
        var text = DecimalText.withPoint(typed);
        if (!text.matches("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})")) {
            throw new IllegalArgumentException("no number");
        }
        // adding nothing turns -0.0 into 0.0
        return Double.valueOf(text) + 0.0;
    }

    private static Object constant(Class<?> type, String text) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> word(constant).equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("not one of them"));
    }

    private static String words(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(FieldType::word)
                .collect(Collectors.joining(", "));
    }

    private static String word(Object constant) {
        return ((Enum<?>) constant).name().toLowerCase(Locale.ROOT);
    }
}
