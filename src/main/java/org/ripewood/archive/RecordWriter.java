package org.ripewood.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a record as JSON, a row at a time: of a row that has been written only its number is kept.
 */
final class RecordWriter {

    static final String FORMAT = "ripewood-record";
    static final int FORMAT_VERSION = 1;

    /** Words that may not be empty, where they are not for the reader. */
    private static final String LEFT_BEHIND = "(left behind)";

    private final RecordRows rows;
    private final Scope scope;
    private final Map<String, LocalNumbers> numbers = new HashMap<>();

    private RecordWriter(RecordRows rows) {
        this.rows = rows;
        this.scope = rows.scope();
    }

    /** Numbers what belongs to a file. */
    static RecordWriter of(RecordRows rows) throws SQLException {
        var writer = new RecordWriter(rows);
        for (var table : rows.tables()) {
            if (table.numbered()) {
                writer.numbers.put(table.name(), LocalNumbers.of(rows.ids(table)));
            }
        }
        return writer;
    }

    /** The same of a file that can hold no pictures, and says nothing of them. */
    static RecordWriter withoutPictures(Connection database, List<PlannedTable> tables, Scope scope)
            throws SQLException {
        var plain = tables.stream().filter(table -> table.picture().isEmpty()).toList();
        return of(new RecordRows(database, plain, scope, Set.of()));
    }

    /** Writes the record and leaves open what it was written to. */
    void write(String contentRevision, Instant now, OutputStream out)
            throws SQLException, IOException {
        try (var json =
                JsonMapper.shared()
                        .writer()
                        .without(StreamWriteFeature.AUTO_CLOSE_TARGET)
                        .createGenerator(out)) {
            json.writeStartObject();
            json.writeStringProperty("format", FORMAT);
            json.writeNumberProperty("formatVersion", FORMAT_VERSION);
            json.writeStringProperty("contentRevision", contentRevision);
            json.writeStringProperty("exportedAt", now.toString());
            json.writeStringProperty("scope", scope.kind().name());
            json.writeBooleanProperty("named", scope.named());
            json.writeName("tables");
            json.writeStartArray();
            writeTables(json);
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    /** Columns that this file has of a table. */
    static List<PlannedColumn> columns(PlannedTable table, Scope scope) {
        return table.travelling().stream()
                .filter(scope::has)
                .filter(column -> scope.named() || !isWords(column) || !column.mayBeEmpty())
                .toList();
    }

    private static boolean isWords(PlannedColumn column) {
        return column.told().meaning() == Meaning.WORDS;
    }

    private void writeTables(JsonGenerator json) throws SQLException, IOException {
        for (var table : rows.tables()) {
            var writing = new Rows(table, json);
            rows.read(table, writing.columns, writing::write);
            writing.end();
        }
    }

    /** What is done with a picture's row. */
    interface PictureReader {

        /**
         * Takes a row.
         *
         * @param number in the file
         * @param id in the database
         * @param row by column
         */
        void picture(int number, long id, Map<String, @Nullable Object> row) throws IOException;
    }

    /** Reads the rows that have a picture, in the file's order. */
    void eachPicture(PictureReader reader) throws SQLException, IOException {
        for (var table : rows.tables()) {
            if (table.picture().isPresent()) {
                rows.read(table, table.columns(), found -> passOn(table, found, reader));
            }
        }
    }

    private void passOn(PlannedTable table, ResultSet found, PictureReader reader)
            throws SQLException, IOException {
        var row = new HashMap<String, @Nullable Object>();
        for (int at = 0; at < table.columns().size(); at++) {
            var column = table.columns().get(at);
            row.put(column.name(), column.type().readOrNull(found, at + 1));
        }
        var picture = table.picture().orElseThrow();
        if (row.get(picture.name()) != null && row.get("id") instanceof Long id) {
            reader.picture(numberOf(table.name(), id), id, row);
        }
    }

    private int numberOf(String of, Long id) {
        var known = numbers.get(of);
        return known == null ? 0 : known.of(id);
    }

    /** The rows of one table; a table without rows is not mentioned. */
    private final class Rows {

        private final PlannedTable table;
        private final JsonGenerator json;
        private final List<PlannedColumn> columns;
        private boolean begun;

        Rows(PlannedTable table, JsonGenerator json) {
            this.table = table;
            this.json = json;
            this.columns = new ArrayList<>(columns(table, scope));
        }

        private void begin() {
            if (!begun) {
                begun = true;
                json.writeRaw('\n');
                json.writeStartObject();
                json.writeStringProperty("table", table.field());
                json.writeName("rows");
                json.writeStartArray();
            }
        }

        void end() {
            if (begun) {
                json.writeEndArray();
                json.writeEndObject();
            }
        }

        void write(ResultSet rows) throws SQLException {
            begin();
            json.writeRaw('\n');
            json.writeStartObject();
            int number = 0;
            boolean hidden = isHidden(rows);
            boolean nameless = false;
            for (int at = 0; at < columns.size(); at++) {
                var column = columns.get(at);
                var value = column.type().readOrNull(rows, at + 1);
                if (value == null || (hidden && isWords(column) && column.mayBeEmpty())) {
                    continue;
                }
                switch (column.told().meaning()) {
                    case ID -> {
                        number = numberOf(table.name(), (Long) value);
                        nameless = scope.hidden().contains((Long) value);
                        json.writeNumberProperty(column.field(), number);
                    }
                    case REFERENCE -> writeReference(column, (Long) value);
                    case PICTURE ->
                            json.writeStringProperty(column.field(), PicturesSent.entry(number));
                    default -> {
                        json.writeName(column.field());
                        var shown =
                                hidden && isWords(column)
                                        ? LEFT_BEHIND
                                        : nameless && isPersonal(column)
                                                ? person(number)
                                                : shown(column, value, number);
                        column.type().write(json, shown);
                    }
                }
            }
            json.writeEndObject();
        }

        /** Only a person's own row has what says who somebody is. */
        private boolean isPersonal(PlannedColumn column) {
            return column.told().meaning() == Meaning.PERSONAL;
        }

        private String person(int number) {
            return "Person " + number;
        }

        private boolean isHidden(ResultSet rows) throws SQLException {
            var by = table.told().by();
            return by != null
                    && !scope.hidden().isEmpty()
                    && scope.hidden().contains(rows.getLong(by));
        }

        /** A verdict names whoever saw the evidence, by name alone. */
        private Object shown(PlannedColumn column, Object value, int number) {
            if ((scope.kind() == Scope.Kind.PERSON || !scope.hidden().isEmpty())
                    && column.told().meaning() == Meaning.TOLD) {
                return DecisionNames.withoutNames(value.toString());
            }
            if (scope.named()) {
                return value;
            }
            return switch (column.told().meaning()) {
                case PERSONAL -> person(number);
                case WORDS -> LEFT_BEHIND;
                case TOLD -> DecisionNames.withoutNames(value.toString());
                default -> value;
            };
        }

        /** What a part of the record names outside of it is left out where it may be. */
        private void writeReference(PlannedColumn column, Long id) {
            int number = numberOf(String.valueOf(column.told().table()), id);
            if (number > 0) {
                json.writeNumberProperty(column.field(), number);
            } else if (!column.mayBeEmpty() && scope.kind() != Scope.Kind.PERSON) {
                throw new IllegalStateException(
                        "%s.%s names row %d, which is not among those of the file"
                                .formatted(table.name(), column.name(), id));
            }
        }
    }
}
