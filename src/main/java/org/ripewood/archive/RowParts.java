package org.ripewood.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import org.ripewood.platform.records.TableDescription;

/**
 * Rows and all that is part of them, to be removed together: parts of parts, and what is told of
 * persons among them.
 */
final class RowParts {

    private static final String PERSON = "person";

    private final List<TableDescription> told;
    private final List<PlannedTable> tables;
    private final Map<String, Set<Long>> keys = new TreeMap<>();

    /**
     * @param told every table a room has said a word of
     * @param tables those with columns, each after those it refers to
     */
    RowParts(List<TableDescription> told, List<PlannedTable> tables) {
        this.told = told;
        this.tables = tables;
    }

    /** Rows to begin with. */
    void begin(String table, Set<Long> ids) {
        of(table).addAll(ids);
    }

    /**
     * What goes, by table: numbers of rows; of rows without one, of what they are part of or about.
     */
    Map<String, Set<Long>> keys() {
        return keys;
    }

    /** Of those tables alone whose rows have a number. */
    Map<String, Set<Long>> numbered() {
        return tables.stream()
                .filter(table -> table.numbered() && keys.containsKey(table.name()))
                .collect(Collectors.toMap(PlannedTable::name, table -> of(table.name())));
    }

    /** Adds parts. Tables stand in order, so parts of parts are found in the same go. */
    void gather(Connection database) throws SQLException {
        for (var table : tables) {
            var owner = table.told().owner();
            if (owner != null) {
                of(table.name())
                        .addAll(select(database, table, owner.name(), found(owner.table())));
            }
            var about = table.told().about();
            if (about != null && (owner == null || table.numbered())) {
                of(table.name()).addAll(select(database, table, about, found(PERSON)));
            }
        }
        keys.values().removeIf(Set::isEmpty);
    }

    /** Keys of a table's rows that have one of these values in a column. */
    Set<Long> select(Connection database, String table, String column, Collection<Long> values)
            throws SQLException {
        var planned =
                tables.stream().filter(one -> one.name().equals(table)).findFirst().orElseThrow();
        return select(database, planned, column, values);
    }

    private static Set<Long> select(
            Connection database, PlannedTable table, String column, Collection<Long> values)
            throws SQLException {
        var found = new HashSet<Long>();
        for (var some : inChunks(values)) {
            try (var statement = database.createStatement();
                    var rows =
                            statement.executeQuery(
                                    "select distinct %s from %s where %s"
                                            .formatted(
                                                    key(table), table.name(), in(column, some)))) {
                while (rows.next()) {
                    found.add(rows.getLong(1));
                }
            }
        }
        return found;
    }

    /**
     * Goes on only when no row that stays names one that goes.
     *
     * @throws Refused 409 otherwise, with the tables they stand in
     */
    void requireNamedByNobody(Connection database) throws SQLException {
        var names = new ArrayList<String>();
        for (var table : tables) {
            for (var column : references(table)) {
                var target = found(column.told().table());
                var naming = select(database, table, column.name(), target);
                if (!found(table.name()).containsAll(naming)) {
                    names.add(table.field());
                }
            }
        }
        if (!names.isEmpty()) {
            throw Refused.conflict(
                    "Entries of the school's own name something of the sample: %s."
                            .formatted(String.join(", ", names)),
                    "Maybe take it out there first.");
        }
    }

    /** Removes all of it: what refers before what is referred to. */
    void remove(Connection database) throws SQLException {
        for (var table : told) {
            if (!table.travels() && table.about() != null) {
                delete(database, table.name(), table.about(), found(PERSON));
            }
        }
        for (int at = tables.size() - 1; at >= 0; at--) {
            var table = tables.get(at);
            var gone = found(table.name());
            if (!gone.isEmpty()) {
                letGoOfEachOther(database, table, gone);
                delete(database, table.name(), key(table), gone);
            }
        }
    }

    /** Rows that name others of their own table, such as those they correct. */
    private static void letGoOfEachOther(Connection database, PlannedTable table, Set<Long> gone)
            throws SQLException {
        for (var column : references(table)) {
            if (table.name().equals(column.told().table())) {
                for (var some : inChunks(gone)) {
                    run(
                            database,
                            "update %s set %s = null where %s"
                                    .formatted(table.name(), column.name(), in(key(table), some)));
                }
            }
        }
    }

    private static void delete(
            Connection database, String table, String column, Collection<Long> values)
            throws SQLException {
        for (var some : inChunks(values)) {
            run(database, "delete from %s where %s".formatted(table, in(column, some)));
        }
    }

    private static void run(Connection database, String statement) throws SQLException {
        try (var running = database.createStatement()) {
            running.executeUpdate(statement);
        }
    }

    private static List<PlannedColumn> references(PlannedTable table) {
        return table.columns().stream()
                .filter(column -> column.told().meaning() == Meaning.REFERENCE)
                .toList();
    }

    /** The column rows are known by: a number of their own, or what they are part of or about. */
    private static String key(PlannedTable table) {
        var owner = table.told().owner();
        if (table.numbered() || (owner == null && table.told().about() == null)) {
            return "id";
        }
        return owner != null ? owner.name() : String.valueOf(table.told().about());
    }

    private Set<Long> of(String table) {
        return keys.computeIfAbsent(table, none -> new HashSet<>());
    }

    private Set<Long> found(@Nullable String table) {
        return keys.getOrDefault(String.valueOf(table), Set.of());
    }

    private static String in(String column, long[] ids) {
        return Selection.Chunks.in(column, ids, 0);
    }

    private static List<long[]> inChunks(Collection<Long> values) {
        var all = values.stream().mapToLong(id -> id).sorted().toArray();
        var chunks = new ArrayList<long[]>();
        for (int from = 0; from < all.length; from += Selection.Chunks.ROWS) {
            chunks.add(
                    Arrays.copyOfRange(
                            all, from, Math.min(all.length, from + Selection.Chunks.ROWS)));
        }
        return chunks;
    }
}
