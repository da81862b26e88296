package org.ripewood.api;

import jakarta.inject.Singleton;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;

/** How much is written down: every table of the database with its number of rows. */
@Singleton
class Tables {

    private final DataSource database;

    Tables(DataSource database) {
        this.database = database;
    }

    Map<String, Long> rows() {
        try (var connection = database.getConnection();
                var statement = connection.createStatement()) {
            var names = new ArrayList<String>();
            try (var found =
                    statement.executeQuery(
                            "select table_name from information_schema.tables"
                                    + " where lower(table_schema) = 'public'"
                                    // the mapper's own, for statements over many rows
                                    + " and lower(table_name) not like 'hte%'")) {
                while (found.next()) {
                    names.add(found.getString(1));
                }
            }
            var rows = new TreeMap<String, Long>();
            try (var counts = statement.executeQuery(countOf(names))) {
                while (counts.next()) {
                    rows.put(counts.getString(1), counts.getLong(2));
                }
            }
            return rows;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String countOf(List<String> names) {
        return String.join(
                " union all ",
                names.stream()
                        .map(name -> "select '%s', count(*) from \"%s\"".formatted(name, name))
                        .toList());
    }
}
