package org.ripewood.course;

import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * A content file as read, which knows on what line each value stands.
 *
 * @param lines JSON Pointer to line, from 1
 */
record Document(String file, JsonNode root, Map<String, Integer> lines) {

    Part top() {
        return new Part(this, root, "");
    }

    /** The line of a value; of what holds it when the value is not there. */
    int line(String pointer) {
        var nearest = pointer;
        while (true) {
            var line = lines.get(nearest);
            if (line != null) {
                return line;
            }
            if (nearest.isEmpty()) {
                return 0;
            }
            nearest = nearest.substring(0, nearest.lastIndexOf('/'));
        }
    }

    /** The JSON Pointer of a value inside another. */
    static String pointer(String parent, String name) {
        return parent + "/" + name.replace("~", "~0").replace("/", "~1");
    }
}
