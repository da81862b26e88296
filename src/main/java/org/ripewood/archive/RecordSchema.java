package org.ripewood.archive;

import java.util.List;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The JSON Schema (2020-12) of a record's file, made from what the rooms say of their tables. */
final class RecordSchema {

    private RecordSchema() {}

    static String of(List<PlannedTable> tables) {
        var schema = JsonMapper.shared().createObjectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "The record of a bonsai school, of a course or of a tree");
        schema.put(
                "description",
                "Rows name each other by numbers of this file's own: 1 for a table's first row."
                        + " Tables come in the order in which they are described here, so that each"
                        + " names rows that came before it; those without rows are left out. With"
                        + " pictures it is the entry record.json of a ZIP; by itself it has no"
                        + " “photo”.");
        schema.put("type", "object");
        var properties = schema.putObject("properties");
        properties.putObject("format").put("const", RecordWriter.FORMAT);
        properties.putObject("formatVersion").put("const", RecordWriter.FORMAT_VERSION);
        text(properties.putObject("contentRevision"), 64)
                .put("description", "the revision of the course content then in force");
        ColumnType.MOMENT.describe(properties.putObject("exportedAt"));
        var scopes = properties.putObject("scope").putArray("enum");
        for (var kind : Scope.Kind.values()) {
            if (kind != Scope.Kind.PERSON) {
                scopes.add(kind.name());
            }
        }
        properties
                .putObject("named")
                .put("type", "boolean")
                .put(
                        "description",
                        "whether persons are told by name; otherwise their own words stayed behind"
                                + " too");
        var any = properties.putObject("tables").put("type", "array").putObject("items");
        var ways = any.putArray("oneOf");
        var definitions = JsonMapper.shared().createObjectNode();
        for (var table : tables) {
            ways.addObject().put("$ref", "#/$defs/" + table.field());
            define(definitions.putObject(table.field()), table);
        }
        required(
                schema,
                "format",
                "formatVersion",
                "contentRevision",
                "exportedAt",
                "scope",
                "named",
                "tables");
        schema.put("additionalProperties", false);
        schema.set("$defs", definitions);
        return JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(schema)
                + "\n";
    }

    private static void define(ObjectNode definition, PlannedTable table) {
        definition.put("type", "object");
        var properties = definition.putObject("properties");
        properties.putObject("table").put("const", table.field());
        var rows = properties.putObject("rows").put("type", "array").put("minItems", 1);
        describeRow(rows.putObject("items"), table);
        required(definition, "table", "rows");
        definition.put("additionalProperties", false);
    }

    private static void describeRow(ObjectNode row, PlannedTable table) {
        row.put("type", "object");
        var properties = row.putObject("properties");
        var required = JsonMapper.shared().createArrayNode();
        for (var column : table.travelling()) {
            describe(properties.putObject(column.field()), column);
            if (!column.mayBeEmpty()
                    && !column.told().schoolOnly()
                    && !column.told().mayBeMissing()) {
                required.add(column.field());
            }
        }
        row.set("required", required);
        row.put("additionalProperties", false);
    }

    private static void describe(ObjectNode schema, PlannedColumn column) {
        column.type().describe(schema);
        var told = column.told();
        if (told.meaning() == Meaning.PICTURE) {
            schema.put("pattern", PicturesSent.ENTRY.pattern());
        } else if (column.type() == ColumnType.TEXT) {
            schema.put("maxLength", column.longest());
        }
        if (!told.oneOf().isEmpty()) {
            var words = schema.putArray("enum");
            told.oneOf().forEach(words::add);
        }
        if (told.meaning() == Meaning.ID || told.meaning() == Meaning.REFERENCE) {
            schema.put("minimum", 1);
        }
        var about =
                switch (told.meaning()) {
                    case ID -> "the row's number in this file";
                    case REFERENCE -> "the number of a row of " + told.targetField();
                    case WORDS -> "somebody's own words";
                    case PERSONAL -> "says who a person is";
                    case SIGN_IN -> "";
                    case TOLD -> "JSON, as it was told on the day";
                    case PICTURE -> "the entry of the ZIP that has the picture, a JPEG";
                    case PLAIN -> "";
                };
        var only = told.schoolOnly() ? "only in a school's own file" : "";
        if (!about.isEmpty() || !only.isEmpty()) {
            schema.put(
                    "description", about + (about.isEmpty() || only.isEmpty() ? "" : "; ") + only);
        }
    }

    private static ObjectNode text(ObjectNode schema, int longest) {
        return schema.put("type", "string").put("maxLength", longest);
    }

    private static void required(ObjectNode schema, String... names) {
        var required = schema.putArray("required");
        for (var name : names) {
            required.add(name);
        }
    }
}
