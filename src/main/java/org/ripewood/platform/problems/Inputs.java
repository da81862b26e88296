package org.ripewood.platform.problems;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.validation.Validator;
import jakarta.ws.rs.core.MultivaluedMap;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Turns what was sent into records that may be worked with, or says all that is wrong with it. */
@ApplicationScoped
public class Inputs {

    private final Validator validator;

    Inputs(Validator validator) {
        this.validator = validator;
    }

    /**
     * The record that a form's fields make. A blank field counts as left out, an unchecked box as
     * no, a map is read from fields named {@code map.key}, a list from repeated fields; fields the
     * record does not know are let pass.
     *
     * @throws Refused 400 with every fault of every field
     */
    public <T> T read(MultivaluedMap<String, String> form, Class<T> type) {
        if (!type.isRecord()) {
            throw new IllegalArgumentException("expected a record, found " + type);
        }
        var fields = new FormFields(form);
        var faults = new ArrayList<Fault>();
        var values = new ArrayList<@Nullable Object>();
        for (var component : type.getRecordComponents()) {
            values.add(fields.value(component, faults));
        }
        var unreadable = new HashSet<String>();
        faults.forEach(fault -> unreadable.add(wholeField(fault.field())));
        T made = made(type, values, faults);
        if (made != null) {
            faults.addAll(constraintFaults(made, unreadable));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        return Objects.requireNonNull(made);
    }

    /**
     * The same value when its Bean Validation annotations allow it.
     *
     * @throws Refused 400 with every fault of every field; also when nothing was sent
     */
    public <T> T check(@Nullable T value) {
        if (value == null) {
            throw Refused.invalid("", "expected a JSON object, found nothing");
        }
        var faults = constraintFaults(value, Set.of());
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        return value;
    }

    /**
     * What keeps a text from being recorded anywhere; null when nothing does.
     *
     * @param longest the most characters that its place has room for
     */
    public static @Nullable String faultOf(String text, int longest) {
        var expected = KeepableFaults.refusalOf(text, longest);
        return expected == null
                ? null
                : "expected %s, found %s".formatted(expected, Found.text(text));
    }

    /** A field that could not even be read is not told to be missing as well. */
    private List<Fault> constraintFaults(Object value, Set<String> unreadable) {
        var faults = new ArrayList<>(KeepableFaults.of(value));
        faults.addAll(ConstraintFaults.of(validator.validate(value)));
        return faults.stream()
                .filter(fault -> !unreadable.contains(wholeField(fault.field())))
                .toList();
    }

    private static String wholeField(String field) {
        return field.split("[.\\[]", 2)[0];
    }

    /** The record, or null when its own checks turn the values down. */
    private static <T> @Nullable T made(
            Class<T> type, List<@Nullable Object> values, List<Fault> faults) {
        var parts = type.getRecordComponents();
        var types = new Class<?>[parts.length];
        for (int i = 0; i < parts.length; i++) {
            types[i] = parts[i].getType();
        }
        try {
            var constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values.toArray());
        } catch (InvocationTargetException e) {
            var cause = e.getCause();
            if (cause instanceof Refused refused) {
                faults.addAll(refused.problem().faults());
            } else if (cause != null && faults.isEmpty()) {
                faults.add(new Fault("", String.valueOf(cause.getMessage())));
            }
            return null;
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("cannot make a " + type, e);
        }
    }
}
