package org.ripewood.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.ripewood.archive.Selection.Chunks;

/** The rows that belong to a file, read from the database in the file's order. */
final class RecordRows {

    private static final int ROWS_FETCHED = 500;

    /** What is done with a row of the database. */
    interface Reader {
        void row(ResultSet rows) throws SQLException, IOException;
    }

    private final Connection database;
    private final List<PlannedTable> tables;
    private final Scope scope;
    private final Map<String, long[]> selected;
    private final Set<Long> lost;

    /**
     * Gathers what belongs to a file.
     *
     * @param database in a transaction that sees one moment of the record
     * @param lost ids of rows whose picture cannot be had; they are left out
     */
    RecordRows(Connection database, List<PlannedTable> tables, Scope scope, Set<Long> lost)
            throws SQLException {
        this.database = database;
        this.tables = List.copyOf(tables);
        this.scope = scope;
        this.selected =
                scope.whole()
                        ? Map.<String, long[]>of()
                        : Selection.of(database, tables, scope, lost);
        this.lost = Set.copyOf(lost);
    }

    List<PlannedTable> tables() {
        return tables;
    }

    Scope scope() {
        return scope;
    }

    /** Ids of a table with numbers. */
    long[] ids(PlannedTable table) throws SQLException {
        var ids =
                scope.whole()
                        ? idsInOrder(table)
                        : selected.getOrDefault(table.name(), new long[0]);
        return mayBeLost(table)
                ? LongStream.of(ids).filter(id -> !lost.contains(id)).toArray()
                : ids;
    }

    private boolean mayBeLost(PlannedTable table) {
        return !lost.isEmpty() && table.picture().isPresent();
    }

    /** Reads these columns of all rows of a table. */
    void read(PlannedTable table, List<PlannedColumn> columns, Reader reader)
            throws SQLException, IOException {
        if (scope.whole()) {
            read(table, columns, open(table), reader);
            return;
        }
        var ids = selected.getOrDefault(table.name(), new long[0]);
        var key = table.numbered() ? "id" : ownerColumn(table);
        for (int from = 0; from < ids.length; from += Chunks.ROWS) {
            read(table, columns, " where " + Chunks.in("t." + key, ids, from), reader);
        }
    }

    private void read(PlannedTable table, List<PlannedColumn> columns, String where, Reader reader)
            throws SQLException, IOException {
        var names =
                columns.stream()
                        .map(column -> "t." + column.name())
                        .collect(Collectors.joining(", "));
        var query =
                "select %s from %s t%s%s order by %s"
                        .formatted(names, table.name(), ownerJoined(table), where, order(table));
        try (var statement = streaming(query);
                var rows = statement.executeQuery()) {
            while (rows.next()) {
                if (!mayBeLost(table) || !lost.contains(rows.getLong("id"))) {
                    reader.row(rows);
                }
            }
        }
    }

    private long[] idsInOrder(PlannedTable table) throws SQLException {
        var ids = LongStream.builder();
        var query =
                "select t.id from %s t%s order by %s"
                        .formatted(table.name(), open(table), order(table));
        try (var statement = streaming(query);
                var rows = statement.executeQuery()) {
            while (rows.next()) {
                ids.add(rows.getLong(1));
            }
        }
        return ids.build().toArray();
    }

    private String open(PlannedTable table) {
        return scope.open(table, "t.").map(rule -> " where " + rule).orElse("");
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
}
