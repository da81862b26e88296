package org.ripewood.platform.problems;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.InputCoercionException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is wrong with a JSON body, field by field as far as the parser came. */
final class JacksonFaults {

    private JacksonFaults() {}

    static Fault of(JsonProcessingException e) {
        if (e instanceof UnrecognizedPropertyException unknown) {
            return new Fault(
                    path(unknown),
                    "expected one of %s, found a field of another name"
                            .formatted(names(unknown.getKnownPropertyIds())));
        }
        if (e instanceof InvalidFormatException format) {
            var field = path(format);
            return new Fault(
                    field,
                    "expected %s, found %s"
                            .formatted(
                                    expected(format.getTargetType()),
                                    Found.value(field, format.getValue())));
        }
        if (e instanceof MismatchedInputException mismatched) {
            return new Fault(
                    path(mismatched),
                    "expected %s, found something else or nothing"
                            .formatted(expected(mismatched.getTargetType())));
        }
        if (e instanceof JsonMappingException mapping && !mapping.getPath().isEmpty()) {
            return new Fault(
                    reachedPath(mapping),
                    "expected %s, found one not to be read".formatted(expected(target(mapping))));
        }
        if (e.getProcessor() instanceof JsonParser parser && isRepeated(e)) {
            return new Fault(
                    String.valueOf(currentName(parser)), "expected it once, found it again");
        }
        return new Fault(
                reachedField(e), "expected JSON, found something else%s".formatted(where(e)));
    }

    /** The field of the outermost object at which reading stopped; empty when there is none. */
    private static String reachedField(JsonProcessingException e) {
        if (!(e.getProcessor() instanceof JsonParser parser)) {
            return "";
        }
        var context = parser.getParsingContext();
        while (context.getParent() != null && !context.getParent().inRoot()) {
            context = context.getParent();
        }
        return context.getCurrentName() == null ? "" : context.getCurrentName();
    }

    /** What cannot be read at all is known by its record; the parser knows the field in it. */
    private static String reachedPath(JsonMappingException e) {
        var last = e.getPath().get(e.getPath().size() - 1);
        var name =
                last.getFieldName() == null && e.getProcessor() instanceof JsonParser parser
                        ? currentName(parser)
                        : null;
        return name == null ? path(e) : path(e) + "." + name;
    }

    /** A number too large for its type is told by the parser beneath. */
    private static @Nullable Class<?> target(JsonMappingException e) {
        return e.getCause() instanceof InputCoercionException number
                ? number.getTargetType()
                : null;
    }

    private static boolean isRepeated(JsonProcessingException e) {
        return String.valueOf(e.getOriginalMessage()).startsWith("Duplicate field");
    }

    private static @Nullable String currentName(JsonParser parser) {
        try {
            return parser.currentName();
        } catch (IOException e) {
            return null;
        }
    }

    /** Such as {@code waivers.vigour_index} or {@code means[3]}. */
    private static String path(JsonMappingException e) {
        var path = new StringBuilder();
        for (var step : e.getPath()) {
            if (step.getFieldName() != null) {
                path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
            } else if (step.getIndex() >= 0) {
                path.append('[').append(step.getIndex()).append(']');
            }
        }
        return path.toString();
    }

    private static String expected(@Nullable Class<?> type) {
        if (type == null) {
            return "another value";
        }
        if (type == String.class) {
            return "a text";
        }
        if (type == LocalDate.class || type == LocalTime.class || type.isEnum()) {
            return FieldType.of(type).expected();
        }
        if (type == Boolean.class || type == boolean.class) {
            return "true or false";
        }
        if (type == Double.class || type == double.class) {
            return "a number such as 12.5";
        }
        if (Number.class.isAssignableFrom(type) || type.isPrimitive()) {
            return "a whole number";
        }
        return Collection.class.isAssignableFrom(type) || type.isArray()
                ? "a JSON array"
                : Map.class.isAssignableFrom(type) || type.isRecord()
                        ? "a JSON object"
                        : "another value";
    }

    private static String names(@Nullable Collection<Object> known) {
        return known == null
                ? "the documented fields"
                : Arrays.stream(known.toArray())
                        .map(String::valueOf)
                        .sorted()
                        .collect(Collectors.joining(", "));
    }

    private static String where(JsonProcessingException e) {
        var location = e.getLocation();
        return location == null
                ? ""
                : " at line %d, column %d".formatted(location.getLineNr(), location.getColumnNr());
    }

    /** The problem that a body with this fault makes. */
    static Problem problem(JsonProcessingException e) {
        return Refused.invalid(List.of(of(e))).problem();
    }
}
