package org.ripewood.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A value in a content file that knows where it stands. What is not there, or of another type, is
 * empty: the schema tells of it, and the checks beside it go on.
 */
record Part(Document document, JsonNode value, String pointer) {

    String file() {
        return document.file();
    }

    int line() {
        return document.line(pointer);
    }

    boolean isThere() {
        return !value.isMissingNode();
    }

    boolean has(String name) {
        return value.has(name);
    }

    /** The names of what it holds, in the order of the file. */
    Set<String> names() {
        return value.isObject() ? Set.copyOf(value.propertyNames()) : Set.of();
    }

    Part at(String name) {
        return new Part(document, value.path(name), Document.pointer(pointer, name));
    }

    /** What a list of this name holds; nothing when there is no such list. */
    List<Part> each(String name) {
        return at(name).each();
    }

    List<Part> each() {
        var parts = new ArrayList<Part>();
        if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                parts.add(new Part(document, value.get(i), pointer + "/" + i));
            }
        }
        return parts;
    }

    /** Its text, or null when it is none. */
    @Nullable String text() {
        return value.isString() ? value.stringValue() : null;
    }

    /** The text of a name, or null when there is none. */
    @Nullable String text(String name) {
        return at(name).text();
    }

    /** The texts in a list of this name. */
    List<String> texts(String name) {
        return each(name).stream()
                .map(Part::value)
                .filter(JsonNode::isString)
                .map(JsonNode::stringValue)
                .toList();
    }

    /** Its number, or NaN when it is none. */
    double number() {
        return value.isNumber() ? value.doubleValue() : Double.NaN;
    }

    double number(String name) {
        return at(name).number();
    }

    /** A text the schema has promised, without the line end of a block. */
    String requireText(String name) {
        var text = text(name);
        if (text == null) {
            throw new IllegalStateException("%s:%d: no text %s".formatted(file(), line(), name));
        }
        return text.strip();
    }

    /** A whole number the schema has promised. */
    int requireInt(String name) {
        return at(name).value().intValue();
    }
}
