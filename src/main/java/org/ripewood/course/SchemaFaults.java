package org.ripewood.course;

import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.StreamSupport;
import org.ripewood.platform.problems.Suggestion;
import tools.jackson.databind.JsonNode;

/** Turns what the validator says into what was found, what was expected, and on which line. */
final class SchemaFaults {

    /** Longer lists of codes are not written out. */
    private static final int MOST_TOLD = 12;

    private static final int MOST_LETTERS = 60;

    private final JsonNode schema;
    private final Document document;
    private final Faults faults;

    SchemaFaults(JsonNode schema, Document document, Faults faults) {
        this.schema = schema;
        this.document = document;
        this.faults = faults;
    }

    void tell(Error error) {
        var pointer = error.getInstanceLocation().toString();
        var rule = rule(error);
        var value = document.root().at(pointer);
        var choice = choice(error.getEvaluationPath());
        if (choice) {
            tell(pointer, "the fields " + value.propertyNames(), expectedChoice(error));
            return;
        }
        var limit = rule.path(error.getKeyword());
        switch (error.getKeyword()) {
            case "required" ->
                    tell(
                            pointer,
                            "no \"%s\"".formatted(error.getProperty()),
                            describe(rule, error));
            case "additionalProperties" ->
                    tell(
                            Document.pointer(pointer, error.getProperty()),
                            "the field \"%s\"".formatted(error.getProperty()),
                            oneOf(rule.path("properties").propertyNames(), error.getProperty()));
            case "enum" -> tell(pointer, show(value), oneOf(texts(limit), value.asString("")));
            case "const" -> tell(pointer, show(value), show(limit));
            case "type" -> tell(pointer, show(value), "a value of type " + types(limit));
            case "pattern" -> tell(pointer, show(value), rule.path("description").asString(""));
            case "minimum" -> tell(pointer, show(value), "at least " + show(limit));
            case "exclusiveMinimum" -> tell(pointer, show(value), "more than " + show(limit));
            case "maximum" -> tell(pointer, show(value), "at most " + show(limit));
            case "minLength" ->
                    tell(pointer, letters(value), "at least %s letters".formatted(limit));
            case "maxLength" ->
                    tell(pointer, letters(value), "at most %s letters".formatted(limit));
            case "minItems" ->
                    tell(pointer, entries(value), "at least %s entries".formatted(limit));
            case "maxItems" -> tell(pointer, entries(value), "at most %s entries".formatted(limit));
            case "minProperties" ->
                    tell(pointer, entries(value), "at least %s fields".formatted(limit));
            case "uniqueItems" -> tell(pointer, "the same entry twice", "each entry once");
            default -> tell(pointer, show(value), error.getMessage());
        }
    }

    private void tell(String pointer, String found, String expected) {
        faults.add(document.file(), document.line(pointer), found, expected);
    }

    /** The part of the schema that holds the broken keyword. */
    private JsonNode rule(Error error) {
        var keyword = error.getSchemaLocation().getFragment();
        return at(keyword.getParent());
    }

    private JsonNode at(NodePath path) {
        var node = schema;
        for (int i = 0; i < path.getNameCount(); i++) {
            var element = path.getElement(i);
            node =
                    element instanceof Integer index
                            ? node.path(index)
                            : node.isArray()
                                    ? node.path(Integer.parseInt(element.toString()))
                                    : node.path(element.toString());
        }
        return node;
    }

    /** Whether the error is one of several ways to write a thing: the ways are told together. */
    private static boolean choice(NodePath path) {
        return firstChoice(path) >= 0;
    }

    private static int firstChoice(NodePath path) {
        for (int i = 0; i < path.getNameCount(); i++) {
            var isField = i > 0 && path.getElement(i - 1).equals("properties");
            if (path.getElement(i).equals("oneOf") && !isField) {
                return i;
            }
        }
        return -1;
    }

    private String expectedChoice(Error error) {
        var path = error.getSchemaLocation().getFragment();
        var first = firstChoice(path);
        while (path.getNameCount() > first + 1) {
            path = path.getParent();
        }
        return "exactly one of: " + String.join("; ", ways(at(path)));
    }

    private static List<String> ways(JsonNode oneOf) {
        var ways = new ArrayList<String>();
        for (var way : oneOf) {
            var fields = String.join(" and ", texts(way.path("required")));
            ways.add(
                    way.has("oneOf")
                            ? fields + " with one of " + String.join(", ", ways(way.path("oneOf")))
                            : fields);
        }
        return ways;
    }

    private static String oneOf(Collection<String> known, String found) {
        var told =
                known.size() <= MOST_TOLD
                        ? "one of " + String.join(", ", known)
                        : "one of the %d known".formatted(known.size());
        return told + "." + Suggestion.maybe(known, found);
    }

    private static String describe(JsonNode rule, Error error) {
        var field = rule.path("properties").path(error.getProperty());
        var description = field.path("description").asString("");
        return description.isEmpty()
                ? "the field \"%s\"".formatted(error.getProperty())
                : "\"%s\": %s".formatted(error.getProperty(), description);
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asString).toList();
    }

    private static String types(JsonNode type) {
        return type.isArray() ? String.join(" or ", texts(type)) : type.asString();
    }

    private static String letters(JsonNode value) {
        var text = value.asString("");
        return text.codePointCount(0, text.length()) + " letters";
    }

    private static String entries(JsonNode value) {
        return value.size() + (value.isObject() ? " fields" : " entries");
    }

    private static String show(JsonNode value) {
        if (value.isObject()) {
            return "a map";
        }
        if (value.isArray()) {
            return "a list";
        }
        if (value.isNull()) {
            return "nothing";
        }
        var text = value.toString();
        return text.length() <= MOST_LETTERS ? text : text.substring(0, MOST_LETTERS) + "…\"";
    }
}
