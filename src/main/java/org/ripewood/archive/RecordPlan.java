package org.ripewood.archive;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.TableDescription;
import org.ripewood.platform.records.TableDescriptions;

/** All that the rooms keep: the tables in an order in which each refers to earlier ones only. */
@ApplicationScoped
class RecordPlan {

    private static final String COLUMNS =
            "select table_name, column_name, data_type, is_nullable, character_maximum_length"
                    + " from information_schema.columns where lower(table_schema) = 'public'";

    private record Found(ColumnType type, boolean mayBeEmpty, int longest) {}

    private final Map<String, TableDescription> told = new LinkedHashMap<>();
    private @Nullable List<PlannedTable> planned;

    RecordPlan(Instance<TableDescriptions> rooms) {
        var byName = new TreeMap<String, TableDescription>();
        for (var room : rooms) {
            for (var table : room.tables()) {
                if (byName.put(table.name(), table) != null) {
                    throw new IllegalStateException(table.name() + " is described twice");
                }
            }
        }
        byName.values().forEach(table -> place(table, byName, new ArrayList<>()));
    }

    private void place(
            TableDescription table, Map<String, TableDescription> byName, List<String> above) {
        if (told.containsKey(table.name())) {
            return;
        }
        if (above.contains(table.name())) {
            throw new IllegalStateException("tables refer to each other in a circle: " + above);
        }
        above.add(table.name());
        for (var reference : table.references()) {
            var target = byName.get(String.valueOf(reference.table()));
            if (target == null) {
                throw new IllegalStateException(
                        "%s.%s refers to a table nobody has described"
                                .formatted(table.name(), reference.name()));
            }
            if (!target.name().equals(table.name())) {
                place(target, byName, above);
            }
        }
        above.remove(table.name());
        told.put(table.name(), table);
    }

    /** Every table a room has said a word of, those included that no file has. */
    List<TableDescription> told() {
        return List.copyOf(told.values());
    }

    /** The tables files have, with what this database says of their columns. */
    List<PlannedTable> tables(Connection database) throws SQLException {
        return all(database).stream().filter(table -> table.told().travels()).toList();
    }

    /** The tables whose columns are described, those included that no file has. */
    synchronized List<PlannedTable> all(Connection database) throws SQLException {
        if (planned == null) {
            var found = found(database);
            planned =
                    told.values().stream()
                            .filter(table -> !table.columns().isEmpty())
                            .map(table -> plan(table, found))
                            .toList();
        }
        return planned;
    }

    private static PlannedTable plan(TableDescription table, Map<String, Found> found) {
        var columns = new ArrayList<PlannedColumn>();
        for (var column : table.columns()) {
            var known = found.get(table.name() + "." + column.name());
            if (known == null) {
                throw new IllegalStateException(
                        "there is no column %s in %s".formatted(column.name(), table.name()));
            }
            columns.add(
                    new PlannedColumn(column, known.type(), known.mayBeEmpty(), known.longest()));
        }
        return new PlannedTable(table, columns);
    }

    private Map<String, Found> found(Connection database) throws SQLException {
        var found = new HashMap<String, Found>();
        try (var statement = database.createStatement();
                var rows = statement.executeQuery(COLUMNS)) {
            while (rows.next()) {
                var table = rows.getString(1).toLowerCase(Locale.ROOT);
                if (told.containsKey(table) && !told.get(table).columns().isEmpty()) {
                    found.put(
                            table + "." + rows.getString(2).toLowerCase(Locale.ROOT),
                            new Found(
                                    ColumnType.of(rows.getString(3)),
                                    rows.getString(4).equals("YES"),
                                    (int) Math.min(rows.getLong(5), Integer.MAX_VALUE)));
                }
            }
        }
        return found;
    }
}
