package org.ripewood.platform.problems;

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

    private static final Pattern UNKEEPABLE = Pattern.compile("[\\p{Cntrl}&&[^\\n\\r\\t]]|\\p{Cs}");

    /** Marks that change the direction of writing (Unicode Standard Annex 9, section 2). */
    private static final Pattern TURNING =
            Pattern.compile("[\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]");

    /** Every text is shown as text anyway; a tag in one is a slip or worse. */
    private static final Pattern TAG = Pattern.compile("<[A-Za-z/!?]");

    private KeepableFaults() {}

    static List<Fault> of(Object value) {
        var faults = new ArrayList<Fault>();
        if (value instanceof Record) {
            for (var component : value.getClass().getRecordComponents()) {
                collect(component.getName(), read(component, value), faults);
            }
        }
        return faults;
    }

    private static void collect(String field, @Nullable Object value, List<Fault> faults) {
        if (value instanceof String text) {
            var expected = refusalOf(field, text);
            if (expected != null) {
                faults.add(
                        new Fault(
                                field,
                                "expected %s, found %s"
                                        .formatted(expected, Found.value(field, text))));
            }
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

    static @Nullable String refusalOf(String field, String text) {
        if (UNKEEPABLE.matcher(text).find()) {
            return "a text without control characters";
        }
        if (TURNING.matcher(text).find()) {
            return "a text without marks that turn the writing round";
        }
        // a password may be anything that can be typed
        return !Found.isSecret(field) && TAG.matcher(text).find() ? "a text without tags" : null;
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
