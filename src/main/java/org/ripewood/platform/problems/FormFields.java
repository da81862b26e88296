package org.ripewood.platform.problems;

import jakarta.ws.rs.core.MultivaluedMap;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A form's fields, read one record component at a time. */
final class FormFields {

    private final MultivaluedMap<String, String> form;

    FormFields(MultivaluedMap<String, String> form) {
        this.form = form;
    }

    /** What the component's field says; null, or no for a check box, when it says nothing. */
    @Nullable Object value(RecordComponent component, List<Fault> faults) {
        var name = component.getName();
        var type = component.getType();
        if (Map.class.isAssignableFrom(type)) {
            return map(name, argument(component, 1), faults);
        }
        if (Set.class.isAssignableFrom(type)) {
            var several = several(name, argument(component, 0), faults);
            return several == null ? null : new LinkedHashSet<>(several);
        }
        if (List.class.isAssignableFrom(type)) {
            return several(name, argument(component, 0), faults);
        }
        return single(name, type, faults);
    }

    private @Nullable Object single(String name, Class<?> type, List<Fault> faults) {
        var said = said(name);
        if (said.isEmpty()) {
            return FieldType.of(type).ofNothing(name, faults);
        }
        // a form made by hand may repeat a field; the last one is the one typed last
        return FieldType.of(type).read(name, said.get(said.size() - 1), faults);
    }

    private @Nullable List<Object> several(String name, Class<?> type, List<Fault> faults) {
        var read = new ArrayList<Object>();
        for (var text : said(name)) {
            var value = FieldType.of(type).read(name, text, faults);
            if (value != null) {
                read.add(value);
            }
        }
        return read.isEmpty() ? null : read;
    }

    private @Nullable Map<String, Object> map(String name, Class<?> type, List<Fault> faults) {
        var read = new LinkedHashMap<String, Object>();
        for (var field : form.keySet()) {
            var said = field.startsWith(name + ".") ? said(field) : List.<String>of();
            if (!said.isEmpty()) {
                var value = FieldType.of(type).read(field, said.get(said.size() - 1), faults);
                if (value != null) {
                    read.put(field.substring(name.length() + 1), value);
                }
            }
        }
        return read.isEmpty() ? null : read;
    }

    /** The field's texts that are not blank. */
    private List<String> said(String field) {
        var texts = form.get(field);
        return texts == null
                ? List.of()
                : texts.stream().filter(text -> text != null && !text.isBlank()).toList();
    }

    private static Class<?> argument(RecordComponent component, int position) {
        Type argument =
                ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[position];
        return (Class<?>) argument;
    }
}
