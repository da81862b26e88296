package org.ripewood.api;

import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;

/** How much is written down: every table of the database with its number of rows. */
@Singleton
class Tables {

    private static final String NAMES =
            "select table_name from information_schema.tables where lower(table_schema) = 'public'"
                    // the mapper's own, for statements over many rows
                    + " and lower(table_name) not like 'hte%'";

    private final DataSource database;

    /** Asked ten thousand times, so that it is the same statement to the database each time. */
    private String count = "";

    Tables(DataSource database) {
        this.database = database;
    }

    Map<String, Long> rows() {
        try (var connection = database.getConnection()) {
            if (count.isEmpty()) {
                count = countOfAll(connection);
            }
            var rows = new TreeMap<String, Long>();
            try (var asking = connection.prepareStatement(count);
                    var counts = asking.executeQuery()) {
                while (counts.next()) {
                    rows.put(counts.getString(1), counts.getLong(2));
                }
            }
            return rows;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String countOfAll(Connection connection) throws SQLException {
        var counts = new ArrayList<String>();
        try (var statement = connection.createStatement();
                var found = statement.executeQuery(NAMES)) {
            while (found.next()) {
                counts.add("select '%1$s', count(*) from \"%1$s\"".formatted(found.getString(1)));
            }
        }
        return String.join(" union all ", counts);
    }
}
