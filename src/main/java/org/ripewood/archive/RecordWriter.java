package org.ripewood.archive;

import java.io.OutputStream;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.ripewood.archive.Selection.Chunks;
import org.ripewood.platform.KeptColumn.Meaning;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a record as JSON, a row at a time: of a row that has been written only its number is kept.
 */
final class RecordWriter {

    static final String FORMAT = "ripewood-record";
    static final int FORMAT_VERSION = 1;

    private static final int ROWS_FETCHED = 500;

    private final Connection database;
    private final List<PlannedTable> tables;
    private final Scope scope;
    private final Map<String, long[]> selected;
    private final Map<String, LocalNumbers> numbers = new HashMap<>();

    private RecordWriter(
            Connection database,
            List<PlannedTable> tables,
            Scope scope,
            Map<String, long[]> selected) {
        this.database = database;
        this.tables = tables;
        this.scope = scope;
        this.selected = selected;
    }

    /**
     * Writes a file.
     *
     * @param database in a transaction that sees one moment of the record
     */
    static void write(
            Connection database,
            List<PlannedTable> tables,
            Scope scope,
            String contentRevision,
            Instant now,
            OutputStream out)
            throws SQLException {
        var selected =
                scope.whole() ? Map.<String, long[]>of() : Selection.of(database, tables, scope);
        var writer = new RecordWriter(database, tables, scope, selected);
        writer.number();
        try (var json = JsonMapper.shared().createGenerator(out)) {
            json.writeStartObject();
            json.writeStringProperty("format", FORMAT);
            json.writeNumberProperty("formatVersion", FORMAT_VERSION);
            json.writeStringProperty("contentRevision", contentRevision);
            json.writeStringProperty("exportedAt", now.toString());
            json.writeStringProperty("scope", scope.kind().name());
            json.writeBooleanProperty("named", scope.named());
            json.writeName("tables");
            json.writeStartArray();
            writer.writeTables(json);
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    /** Columns that this file has of a table. */
    static List<PlannedColumn> columns(PlannedTable table, Scope scope) {
        return table.travelling().stream()
                .filter(
                        column ->
                                scope.whole()
                                        || scope.kind() == Scope.Kind.PERSON
                                        || !isSchoolsAlone(column))
                .filter(
                        column ->
                                scope.named()
                                        || column.told().meaning() != Meaning.WORDS
                                        || !column.mayBeEmpty())
                .toList();
    }

    /** How somebody signs in here is nobody's business elsewhere. */
    static boolean isSchoolsAlone(PlannedColumn column) {
        return column.told().meaning() == Meaning.SIGN_IN;
    }

    private void number() throws SQLException {
        for (var table : tables) {
            if (table.numbered()) {
                numbers.put(
                        table.name(),
                        LocalNumbers.of(
                                scope.whole()
                                        ? idsInOrder(table)
                                        : selected.getOrDefault(table.name(), new long[0])));
            }
        }
    }

    private long[] idsInOrder(PlannedTable table) throws SQLException {
        var ids = LongStream.builder();
        var query = "select t.id from %s t order by %s".formatted(table.name(), order(table));
        try (var statement = streaming(query);
                var rows = statement.executeQuery()) {
            while (rows.next()) {
                ids.add(rows.getLong(1));
            }
        }
        return ids.build().toArray();
    }

    private void writeTables(JsonGenerator json) throws SQLException {
        for (var table : tables) {
            var writing = new Rows(table, json);
            if (scope.whole()) {
                writing.write("");
            } else {
                var ids = selected.getOrDefault(table.name(), new long[0]);
                var key = table.numbered() ? "id" : ownerColumn(table);
                for (int from = 0; from < ids.length; from += Chunks.ROWS) {
                    writing.write(" where " + Chunks.in("t." + key, ids, from));
                }
            }
            writing.end();
        }
    }

    private static String ownerColumn(PlannedTable table) {
        var owner = table.told().owner();
        return owner == null ? "id" : owner.name();
    }

    private String order(PlannedTable table) {
        if (!scope.whole() && table.numbered()) {
            return "t.id";
        }
        var order = new ArrayList<String>();
        for (var name : table.told().order()) {
            boolean owners = ownerOutOfTurn(table) && name.equals(ownerColumn(table));
            if (owners) {
                ownerTable(table).told().order().forEach(each -> order.add("o." + each));
            } else {
                order.add("t." + name);
            }
        }
        return String.join(", ", order);
    }

    /** Rows without a number stand in the order of what they are part of. */
    private String ownerJoined(PlannedTable table) {
        return ownerOutOfTurn(table)
                ? " join %s o on o.id = t.%s"
                        .formatted(ownerTable(table).name(), ownerColumn(table))
                : "";
    }

    private boolean ownerOutOfTurn(PlannedTable table) {
        return scope.whole()
                && !table.numbered()
                && table.ownerTable().isPresent()
                && !ownerTable(table).told().order().equals(List.of("id"));
    }

    private PlannedTable ownerTable(PlannedTable table) {
        var name = table.ownerTable().orElseThrow();
        return tables.stream().filter(other -> other.name().equals(name)).findFirst().orElseThrow();
    }

    /** Without automatic commits and with a fetch size PostgreSQL sends rows as they are read. */
    private PreparedStatement streaming(String query) throws SQLException {
        var statement = database.prepareStatement(query);
        statement.setFetchSize(ROWS_FETCHED);
        return statement;
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

        void write(String where) throws SQLException {
            var names =
                    columns.stream()
                            .map(column -> "t." + column.name())
                            .collect(Collectors.joining(", "));
            var query =
                    "select %s from %s t%s%s order by %s"
                            .formatted(
                                    names, table.name(), ownerJoined(table), where, order(table));
            try (var statement = streaming(query);
                    var rows = statement.executeQuery()) {
                while (rows.next()) {
                    begin();
                    writeRow(rows);
                }
            }
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

        private void writeRow(ResultSet rows) throws SQLException {
            json.writeRaw('\n');
            json.writeStartObject();
            int number = 0;
            for (int at = 0; at < columns.size(); at++) {
                var column = columns.get(at);
                var value = column.type().readOrNull(rows, at + 1);
                if (value == null) {
                    continue;
                }
                switch (column.told().meaning()) {
                    case ID -> {
                        number = numberOf(table.name(), (Long) value);
                        json.writeNumberProperty(column.field(), number);
                    }
                    case REFERENCE -> writeReference(column, (Long) value);
                    default -> {
                        json.writeName(column.field());
                        column.type().write(json, shown(column, value, number));
                    }
                }
            }
            json.writeEndObject();
        }

        private Object shown(PlannedColumn column, Object value, int number) {
            if (scope.kind() == Scope.Kind.PERSON && column.told().meaning() == Meaning.TOLD) {
                return ToldVerdict.withoutNames(value.toString());
            }
            if (scope.named()) {
                return value;
            }
            return switch (column.told().meaning()) {
                case PERSONAL -> "Person " + number;
                case WORDS -> "(left behind)";
                case TOLD -> ToldVerdict.withoutNames(value.toString());
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

        private int numberOf(String of, Long id) {
            var known = numbers.get(of);
            return known == null ? 0 : known.of(id);
        }
    }
}
