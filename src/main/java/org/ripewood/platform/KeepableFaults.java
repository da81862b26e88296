package org.ripewood.platform;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Faults that no annotation tells but that no database keeps: control characters and halves of
 * characters in texts, numbers that are none.
 */
final class KeepableFaults {

    private static final Pattern UNKEEPABLE = Pattern.compile("[\\p{Cntrl}&&[^\\n\\r\\t]]|\\p{Cs}");

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
        if (value instanceof String text && UNKEEPABLE.matcher(text).find()) {
            faults.add(
                    new Fault(
                            field,
                            "expected a text without control characters, found "
                                    + Found.value(field, text)));
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
