package org.ripewood.archive;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Suggestion;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A record's file, read row by row: what its rows say is its reader's to judge. */
final class RecordFile {

    /** What is done with a file as it is read. */
    interface Reader {

        /** Everything before the tables, as it stands there. */
        void header(Map<String, JsonNode> header);

        /** A table begins. */
        void begin(PlannedTable table, String pointer);

        /**
         * A row of the table that began last.
         *
         * @param number 1 for the table's first
         */
        void row(int number, ObjectNode row, String pointer);

        /** The table that began last has ended. */
        void end();
    }

    /** The file holds objects in lists in an object in a list; nothing in it is deeper. */
    private static final int DEEPEST = 8;

    /** A verdict as it was told is the longest text there is. */
    private static final int LONGEST_TEXT = 200_000;

    private static final int LONGEST_NUMBER = 60;

    private final Path file;
    private final List<PlannedTable> tables;
    private final FileFaults faults;
    private final JsonMapper mapper;

    RecordFile(Path file, List<PlannedTable> tables, FileFaults faults) {
        this.file = file;
        this.tables = tables;
        this.faults = faults;
        this.mapper =
                JsonMapper.builder(
                                JsonFactory.builder()
                                        .streamReadConstraints(
                                                StreamReadConstraints.builder()
                                                        .maxNestingDepth(DEEPEST)
                                                        .maxStringLength(LONGEST_TEXT)
                                                        .maxNumberLength(LONGEST_NUMBER)
                                                        .build())
                                        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                                        .build())
                        .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                        .build();
    }

    /** Reads all of it; what is no JSON, or not laid out as a record, is a fault and ends it. */
    void read(Reader reader) {
        try (var in = new BufferedInputStream(Files.newInputStream(file));
                var json = mapper.createParser(in)) {
            readWhole(json, reader);
        } catch (JacksonException e) {
            var where = e.getLocation();
            faults.end(
                    "",
                    "expected a record's file, found something unreadable in line %d, column %d"
                            .formatted(
                                    where == null ? 0 : where.getLineNr(),
                                    where == null ? 0 : where.getColumnNr()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void readWhole(JsonParser json, Reader reader) {
        expect(json.nextToken(), JsonToken.START_OBJECT, "", "an object");
        var header = new TreeMap<String, JsonNode>();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            var name = json.currentName();
            json.nextToken();
            if (name.equals("tables")) {
                reader.header(header);
                readTables(json, reader);
                if (json.nextToken() != JsonToken.END_OBJECT || json.nextToken() != null) {
                    faults.end("", "expected the file to end with its tables, found more");
                }
                return;
            }
            if (json.currentToken().isStructStart()) {
                faults.end("/" + name, "expected a value, found more than one");
            }
            header.put(name, node(json));
        }
        faults.end("/tables", "expected the record's tables, found none");
    }

    private void readTables(JsonParser json, Reader reader) {
        expect(json.currentToken(), JsonToken.START_ARRAY, "/tables", "a list of tables");
        int next = 0;
        for (int index = 0; json.nextToken() != JsonToken.END_ARRAY; index++) {
            var pointer = "/tables/" + index;
            expect(json.currentToken(), JsonToken.START_OBJECT, pointer, "a table");
            next = readTable(json, reader, pointer, next);
        }
    }

    /**
     * Reads one table.
     *
     * @param from the first table that may come
     * @return the first that may come after it
     */
    private int readTable(JsonParser json, Reader reader, String pointer, int from) {
        if (json.nextToken() != JsonToken.PROPERTY_NAME || !json.currentName().equals("table")) {
            faults.end(pointer, "expected the name of the table first, as “table”");
        }
        json.nextToken();
        int at = place(json.getString(), pointer, from);
        var table = tables.get(at);
        if (json.nextToken() != JsonToken.PROPERTY_NAME || !json.currentName().equals("rows")) {
            faults.end(pointer, "expected the table's rows after its name, as “rows”");
        }
        var rows = pointer + "/rows";
        expect(json.nextToken(), JsonToken.START_ARRAY, rows, "a list of rows");
        reader.begin(table, pointer);
        for (int number = 1; json.nextToken() != JsonToken.END_ARRAY; number++) {
            var where = rows + "/" + (number - 1);
            expect(json.currentToken(), JsonToken.START_OBJECT, where, "a row");
            reader.row(number, (ObjectNode) node(json), where);
        }
        reader.end();
        expect(json.nextToken(), JsonToken.END_OBJECT, pointer, "nothing after the rows");
        return at + 1;
    }

    private int place(@Nullable String name, String pointer, int from) {
        var names = tables.stream().map(PlannedTable::field).toList();
        int at = names.indexOf(String.valueOf(name));
        if (at < 0) {
            faults.end(
                    pointer + "/table",
                    "there is no table “%s” in a record.%s"
                            .formatted(name, Suggestion.maybe(names, String.valueOf(name))));
        }
        if (at < from) {
            faults.end(
                    pointer + "/table",
                    "expected each table once and in the schema's order, found “%s” after “%s”"
                            .formatted(name, names.get(from - 1)));
        }
        return at;
    }

    private void expect(
            @Nullable JsonToken found, JsonToken expected, String pointer, String what) {
        if (found != expected) {
            faults.end(
                    pointer,
                    "expected %s, found %s"
                            .formatted(
                                    what, found == null ? "the end of the file" : "another thing"));
        }
    }

    private JsonNode node(JsonParser json) {
        JsonNode node = mapper.readTree(json);
        if (node == null) {
            throw new IllegalStateException("a value that began has no end");
        }
        return node;
    }
}
