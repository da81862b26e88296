package org.ripewood.platform.problems;

import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.UriInfo;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Query parameters that do not parse. Jakarta REST answers 404 for them as for a path that does not
 * parse; here only the path's is "not found", the query's is a fault to be told.
 */
public final class ParameterFaults {

    private ParameterFaults() {}

    /** The problem, or null when no query parameter is to blame. */
    public static @Nullable Problem of(NotFoundException e, UriInfo uri) {
        var cause = e.getCause();
        if (cause == null) {
            return null;
        }
        var blamed = blamed(cause);
        for (var parameter : uri.getQueryParameters().entrySet()) {
            for (var text : parameter.getValue()) {
                if (text.equals(blamed)) {
                    var message =
                            "expected %s, found %s"
                                    .formatted(
                                            expected(cause), Found.value(parameter.getKey(), text));
                    return Refused.invalid(List.of(new Fault(parameter.getKey(), message)))
                            .problem();
                }
            }
        }
        return null;
    }

    private static String expected(Throwable cause) {
        return cause instanceof DateTimeParseException
                ? "a day such as 2024-03-31"
                : cause instanceof NumberFormatException ? "a whole number" : "another word";
    }

    private static @Nullable String blamed(Throwable cause) {
        if (cause instanceof DateTimeParseException day) {
            return day.getParsedString();
        }
        var message = String.valueOf(cause.getMessage());
        // For input string: "abc"
        int from = message.indexOf('"');
        int to = message.lastIndexOf('"');
        if (from >= 0 && to > from) {
            return message.substring(from + 1, to);
        }
        // No enum constant org.example.Kind.ABC
        int dot = message.lastIndexOf('.');
        return cause instanceof IllegalArgumentException && dot >= 0
                ? message.substring(dot + 1)
                : null;
    }
}
