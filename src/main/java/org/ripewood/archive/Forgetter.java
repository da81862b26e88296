package org.ripewood.archive;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.ColumnDescription.Meaning;
import org.ripewood.platform.records.TableDescription;

/**
 * Takes a person out of the record: everything by which they could be known, and every word of
 * theirs or about them. Ids stay, so that a tree's history still says which entries are one
 * person's.
 */
final class Forgetter {

    /** Words that may not be empty get these. */
    private static final String REMOVED = "(removed)";

    private static final String FORGOTTEN_LOGIN = "former-";

    private final Connection database;
    private final List<TableDescription> told;
    private final List<PlannedTable> tables;

    Forgetter(Connection database, List<TableDescription> told, List<PlannedTable> tables) {
        this.database = database;
        this.told = told;
        this.tables = tables;
    }

    /** What is on record of a person, of whom so many photos are. */
    Forgetting tell(long personId, long photos) throws SQLException {
        var words = new TreeMap<String, Long>();
        for (var table : tables) {
            long rows = 0;
            for (var column : whoseWords(table)) {
                rows = Math.max(rows, number(rowsWithWords(table, column), personId));
            }
            if (rows > 0) {
                words.put(table.field(), rows);
            }
        }
        return new Forgetting(
                personId,
                number("select version from person where id = ?", personId),
                texts("select name from person where id = ?", personId).get(0),
                isForgotten(personId) && photos == 0,
                texts(
                        "select label from tree where keeper_id = ? and left_on is null"
                                + " order by label, id",
                        personId),
                number("select count(*) from membership where person_id = ?", personId),
                photos,
                words);
    }

    private boolean isForgotten(long personId) throws SQLException {
        return login(personId).equals(FORGOTTEN_LOGIN + personId);
    }

    private String login(long personId) throws SQLException {
        return texts("select login from person where id = ?", personId).get(0);
    }

    void forget(long personId) throws SQLException {
        if (isForgotten(personId)) {
            return;
        }
        var name = texts("select name from person where id = ?", personId).get(0);
        var login = login(personId);
        var after = "Former member " + personId;
        for (var table : tables) {
            for (var column : whoseWords(table)) {
                removeWords(table, column, personId);
            }
        }
        run("delete from person_role where person_id = ?", personId);
        run("delete from membership where person_id = ?", personId);
        for (var table : told) {
            if (!table.travels() && table.about() != null) {
                run("delete from %s where %s = ?".formatted(table.name(), table.about()), personId);
            }
        }
        run(
                "update person set name = ?, login = ?, password_hash = ?, active = false,"
                        + " version = version + 1 where id = ?",
                after,
                FORGOTTEN_LOGIN + personId,
                "forgotten",
                personId);
        var traces = new NameTraces(database, tables);
        traces.replace(name, after);
        traces.replace(login, after);
    }

    /** The columns that say whose words a row has, or whom they are about. */
    private static List<String> whoseWords(PlannedTable table) {
        var columns = new ArrayList<String>();
        if (table.columns().stream().anyMatch(Forgetter::areWords)) {
            addIfThere(columns, table.told().by());
            addIfThere(columns, table.told().about());
        }
        return columns;
    }

    private static void addIfThere(List<String> columns, @Nullable String column) {
        if (column != null) {
            columns.add(column);
        }
    }

    private static boolean areWords(PlannedColumn column) {
        return column.told().meaning() == Meaning.WORDS;
    }

    private static String rowsWithWords(PlannedTable table, String whose) {
        var filled =
                table.columns().stream()
                        .filter(Forgetter::areWords)
                        .map(column -> column.name() + " is not null")
                        .toList();
        return "select count(*) from %s where %s = ? and (%s)"
                .formatted(table.name(), whose, String.join(" or ", filled));
    }

    private void removeWords(PlannedTable table, String whose, long personId) throws SQLException {
        for (var column : table.columns()) {
            if (areWords(column)) {
                run(
                        "update %s set %s = ? where %s = ? and %s is not null"
                                .formatted(table.name(), column.name(), whose, column.name()),
                        column.mayBeEmpty() ? null : REMOVED,
                        personId);
            }
        }
    }

    private void run(String statement, @Nullable Object... values) throws SQLException {
        try (var running = bound(statement, values)) {
            running.executeUpdate();
        }
    }

    private long number(String query, Object... values) throws SQLException {
        return Long.parseLong(texts(query, values).get(0));
    }

    private List<String> texts(String query, Object... values) throws SQLException {
        var found = new ArrayList<String>();
        try (var asking = bound(query, values);
                var rows = asking.executeQuery()) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }

    private PreparedStatement bound(String statement, @Nullable Object... values)
            throws SQLException {
        var bound = database.prepareStatement(statement);
        for (int at = 0; at < values.length; at++) {
            bound.setObject(at + 1, values[at]);
        }
        return bound;
    }
}
