package org.ripewood.transfer;

import java.util.Map;

/**
 * Where in the files something was written.
 *
 * @param line its first line
 * @param lines line of each of its keys
 */
record Place(String file, int line, Map<String, Integer> lines) {

    Place {
        lines = Map.copyOf(lines);
    }

    static Place of(String file, int line) {
        return new Place(file, line, Map.of());
    }

    /** The line of that key, or the first line when it is not written there. */
    FileFault fault(String key, String message) {
        return new FileFault(file, lines.getOrDefault(key, line), message);
    }
}
