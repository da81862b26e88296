package org.ripewood.platform.problems;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.ElementKind;
import jakarta.validation.Path;
import java.lang.annotation.Annotation;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Bean Validation's violations as faults: field as sent, what was expected, what was found. */
final class ConstraintFaults {

    private static final int UNBOUNDED = Integer.MAX_VALUE;

    /** Nodes of a path that are about Java and not about what was sent. */
    private static final Set<ElementKind> NOT_SENT =
            Set.of(
                    ElementKind.METHOD,
                    ElementKind.CONSTRUCTOR,
                    ElementKind.CROSS_PARAMETER,
                    ElementKind.RETURN_VALUE,
                    ElementKind.BEAN);

    private ConstraintFaults() {}

    static List<Fault> of(Collection<? extends ConstraintViolation<?>> violations) {
        return violations.stream()
                .map(ConstraintFaults::fault)
                .distinct()
                .sorted(Comparator.comparing(Fault::field).thenComparing(Fault::message))
                .toList();
    }

    private static Fault fault(ConstraintViolation<?> violation) {
        var field = field(violation.getPropertyPath());
        return new Fault(field, message(field, violation));
    }

    /** The path in JSON's terms: {@code waivers.key}, {@code means[3]}, {@code site.name}. */
    static String field(Path path) {
        var field = new StringBuilder();
        for (var node : path) {
            if (node.getKey() != null) {
                field.append('.').append(node.getKey());
            } else if (node.getIndex() != null) {
                field.append('[').append(node.getIndex()).append(']');
            }
            var name = node.getName();
            if (name != null
                    && !NOT_SENT.contains(node.getKind())
                    && node.getKind() != ElementKind.CONTAINER_ELEMENT) {
                field.append(field.isEmpty() ? "" : ".").append(name);
            }
        }
        return field.toString();
    }

    private static String message(String field, ConstraintViolation<?> violation) {
        var descriptor = violation.getConstraintDescriptor();
        Annotation constraint = descriptor.getAnnotation();
        var rule = descriptor.getAttributes();
        var value = violation.getInvalidValue();
        var found = Found.value(field, value);
        return switch (constraint.annotationType().getSimpleName()) {
            case "NotNull", "NotBlank", "NotEmpty" -> "expected a value, found nothing";
            case "Size" -> size(rule, value);
            case "DecimalMin", "Min" ->
                    "expected at least %s, found %s".formatted(rule.get("value"), found);
            case "DecimalMax", "Max" ->
                    "expected at most %s, found %s".formatted(rule.get("value"), found);
            default -> "expected %s, found %s".formatted(violation.getMessage(), found);
        };
    }

    private static int bound(Map<String, Object> rule, String which) {
        return rule.get(which) instanceof Integer bound ? bound : 0;
    }

    private static String size(Map<String, Object> rule, Object value) {
        int least = bound(rule, "min");
        int most = bound(rule, "max");
        var unit = value instanceof CharSequence ? "characters" : "entries";
        var expected =
                least == most
                        ? "%d %s".formatted(least, unit)
                        : most == UNBOUNDED
                                ? "at least %d %s".formatted(least, unit)
                                : least == 0
                                        ? "at most %d %s".formatted(most, unit)
                                        : "%d to %d %s".formatted(least, most, unit);
        return "expected %s, found %s".formatted(expected, Found.size(value));
    }
}
