package org.ripewood.transfer;

import java.util.Map;

/**
 * Where in the files something was written.
 *
 * @param line its first line
 * @param lines line of each of its keys
 * @param about the one key whose value is written there, such as a fact's code; empty for entries
 *     of several keys
 */
record Place(String file, int line, Map<String, Integer> lines, String about) {

    Place {
        lines = Map.copyOf(lines);
    }

    /** A single value on a line of its own. */
    static Place of(String file, int line, String about) {
        return new Place(file, line, Map.of(), about);
    }

    /** The line of that key, or the first line when it is not written there. */
    FileFault fault(String key, String message) {
        return new FileFault(file, lines.getOrDefault(key, line), message);
    }

    /** What a façade said of a field of its input. */
    FileFault refused(String field, String message) {
        var name = about.isEmpty() || field.equals("value") ? about : about + ", " + field;
        return fault(field, "%s: %s".formatted(name.isEmpty() ? field : name, message));
    }
}
