package org.ripewood.platform.problems;

import jakarta.validation.constraints.Size;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Faults that no annotation tells: what no database keeps, such as control characters, halves of
 * characters and numbers that are none, and what could only be meant to mislead a reader or a
 * browser, such as marks that turn the writing round and tags.
 */
final class KeepableFaults {

    /** Marks that change the direction of writing (Unicode Standard Annex 9, section 2). */
    private static final Pattern TURNING =
            Pattern.compile("[\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");

    /** Every text is shown as text anyway; a tag in one is a slip or worse. */
    private static final Pattern TAG = Pattern.compile("<[A-Za-z/!?]");

    /** Whoever may write more than this writes sentences; what is shorter names something. */
    private static final int LONGEST_NAME = 200;

    private KeepableFaults() {}

    static List<Fault> of(Object value) {
        var faults = new ArrayList<Fault>();
        if (value instanceof Record) {
            for (var component : value.getClass().getRecordComponents()) {
                var field = component.getName();
                var read = read(component, value);
                collect(field, read, faults);
                if (read instanceof String text && longest(component) <= LONGEST_NAME) {
                    tell(field, text, refusalOfName(field, text), faults);
                }
            }
        }
        return faults;
    }

    private static int longest(RecordComponent component) {
        var size = component.getAccessor().getAnnotation(Size.class);
        return size == null ? Integer.MAX_VALUE : size.max();
    }

    private static void tell(
            String field, String text, @Nullable String expected, List<Fault> faults) {
        if (expected != null) {
            faults.add(
                    new Fault(
                            field,
                            "expected %s, found %s".formatted(expected, Found.value(field, text))));
        }
    }

    private static void collect(String field, @Nullable Object value, List<Fault> faults) {
        if (value instanceof String text) {
            tell(field, text, refusalOf(field, text), faults);
        } else if (value instanceof Double number && !Double.isFinite(number)) {
            faults.add(new Fault(field, "expected a finite number, found " + number));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach(
                    (key, kept) -> {
                        collect(field, key, faults);
                        collect(field + "." + key, kept, faults);
                    });
        } else if (value instanceof List<?> several) {
            for (int i = 0; i < several.size(); i++) {
                collect(field + "[" + i + "]", several.get(i), faults);
            }
        } else if (value instanceof Record) {
            of(value).forEach(in -> faults.add(new Fault(field + "." + in.field(), in.message())));
        }
    }

    private static @Nullable String refusalOf(String field, String text) {
        if (text.codePoints().anyMatch(Characters::isUnkeepable)) {
            return "a text without control characters and codes that are no character";
        }
        if (!text.isBlank() && Characters.hidesAll(text)) {
            return "a text that can be seen";
        }
        if (TURNING.matcher(text).find()) {
            return "a text without marks that turn the writing round";
        }
        // a password may be anything that can be typed
        return !Found.isSecret(field) && TAG.matcher(text).find() ? "a text without tags" : null;
    }

    /** What a text of so many characters at most may be refused for besides. */
    static @Nullable String refusalOf(String text, int longest) {
        var refusal = refusalOf("", text);
        return refusal == null && longest <= LONGEST_NAME ? refusalOfName("", text) : refusal;
    }

    /** A name on two lines breaks lists, papers and calendars apart. */
    private static @Nullable String refusalOfName(String field, String text) {
        return !Found.isSecret(field) && Characters.hasLines(text) ? "one line" : null;
    }

    private static @Nullable Object read(RecordComponent component, Object record) {
        try {
            var accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
