package org.ripewood.archive;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.flywaydb.core.Flyway;

/** An empty school for records to be brought into, and plain questions to any. */
final class SecondSchool {

    /** A file, closed once after migrating: rules remember the session that made them. */
    private static final String URL =
            "jdbc:h2:file:%s;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";

    private SecondSchool() {}

    static Connection empty(Path folder, String name) throws SQLException {
        var url = URL.formatted(folder.resolve(name).toAbsolutePath());
        Flyway.configure().dataSource(url, "sa", "").outOfOrder(true).load().migrate();
        return DriverManager.getConnection(url, "sa", "");
    }

    static void run(Connection on, String statement) throws SQLException {
        try (var running = on.createStatement()) {
            running.execute(statement);
        }
    }

    static String text(Connection on, String query) throws SQLException {
        return texts(on, query).get(0);
    }

    static List<String> texts(Connection on, String query) throws SQLException {
        var found = new ArrayList<String>();
        try (var statement = on.createStatement();
                var rows = statement.executeQuery(query)) {
            while (rows.next()) {
                found.add(rows.getString(1));
            }
        }
        return found;
    }
}
