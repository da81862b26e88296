package org.ripewood.archive;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.records.ColumnDescription.Meaning;

/**
 * Where others' words, labels and verdicts name a person. Only the name by itself is replaced and
 * no part of a longer word, and codes never: they have no blank.
 */
final class NameTraces {

    /** Shorter ones are words of everyday speech as well. */
    private static final int SHORTEST = 4;

    /** A row's key and the text in it. */
    private record Trace(List<@Nullable Object> key, String text) {}

    private final Connection database;
    private final List<PlannedTable> tables;

    NameTraces(Connection database, List<PlannedTable> tables) {
        this.database = database;
        this.tables = tables;
    }

    void replace(String name, String after) throws SQLException {
        if (name.length() < SHORTEST) {
            return;
        }
        var alone =
                Pattern.compile(
                        "(?<![\\p{L}\\p{N}_-])%s(?![\\p{L}\\p{N}_-])"
                                .formatted(Pattern.quote(name)));
        for (var table : tables) {
            for (var column : table.columns()) {
                if (mayName(column, name)) {
                    replace(table, column, name, alone, after);
                }
            }
        }
    }

    private static boolean mayName(PlannedColumn column, String name) {
        if (column.type() != ColumnType.TEXT || !column.told().travels()) {
            return false;
        }
        var meaning = column.told().meaning();
        return meaning == Meaning.WORDS
                || meaning == Meaning.TOLD
                || (meaning == Meaning.PLAIN
                        && column.told().oneOf().isEmpty()
                        && name.contains(" "));
    }

    private void replace(
            PlannedTable table, PlannedColumn column, String name, Pattern alone, String after)
            throws SQLException {
        var key = key(table);
        var where =
                key.stream().map(each -> each.name() + " = ?").collect(Collectors.joining(" and "));
        try (var update =
                database.prepareStatement(
                        "update %s set %s = ? where %s"
                                .formatted(table.name(), column.name(), where))) {
            for (var trace : traces(table, column, name)) {
                var text = alone.matcher(trace.text()).replaceAll(Matcher.quoteReplacement(after));
                update.setString(
                        1,
                        text.length() <= column.longest()
                                ? text
                                : text.substring(0, column.longest()));
                for (int at = 0; at < key.size(); at++) {
                    key.get(at).type().bind(update, at + 2, trace.key().get(at));
                }
                update.executeUpdate();
            }
        }
    }

    private List<Trace> traces(PlannedTable table, PlannedColumn column, String name)
            throws SQLException {
        var key = key(table);
        var names = key.stream().map(PlannedColumn::name).collect(Collectors.joining(", "));
        var traces = new ArrayList<Trace>();
        try (var asking =
                database.prepareStatement(
                        "select %s, %s from %s where %s like ?"
                                .formatted(column.name(), names, table.name(), column.name()))) {
            asking.setString(1, "%" + escaped(name) + "%");
            try (var rows = asking.executeQuery()) {
                while (rows.next()) {
                    var values = new ArrayList<@Nullable Object>();
                    for (int at = 0; at < key.size(); at++) {
                        values.add(key.get(at).type().readOrNull(rows, at + 2));
                    }
                    traces.add(new Trace(values, rows.getString(1)));
                }
            }
        }
        return traces;
    }

    private static List<PlannedColumn> key(PlannedTable table) {
        var names = table.numbered() ? List.of("id") : table.told().order();
        return table.columns().stream().filter(each -> names.contains(each.name())).toList();
    }

    private static String escaped(String name) {
        return name.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_");
    }
}
