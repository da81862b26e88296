package org.ripewood.sample;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Every row of every table and every file of a photo, looked at from outside. */
@ApplicationScoped
class WholeSchool {

    /** Who did what is told for ever, and what a page says once for some minutes. */
    private static final Set<String> LEFT_OUT =
            Set.of("audit_entry", "audit_change", "write_trial", "page_note");

    private final DataSource database;
    private final Path photos;

    WholeSchool(DataSource database, @ConfigProperty(name = "ripewood.photos.folder") Path photos) {
        this.database = database;
        this.photos = photos;
    }

    /** Rows by table, each with all its values. */
    Map<String, List<String>> rows() throws SQLException {
        var all = new TreeMap<String, List<String>>();
        try (var connection = database.getConnection()) {
            for (var table : tables(connection)) {
                all.put(table, rows(connection, table));
            }
        }
        return all;
    }

    Set<Path> files() throws IOException {
        if (!Files.exists(photos)) {
            return Set.of();
        }
        try (var files = Files.walk(photos)) {
            return new TreeSet<>(files.filter(Files::isRegularFile).toList());
        }
    }

    private static List<String> tables(Connection connection) throws SQLException {
        var tables = new ArrayList<String>();
        try (var statement = connection.createStatement();
                var found =
                        statement.executeQuery(
                                "select table_name from information_schema.tables where"
                                        + " lower(table_schema) = 'public'")) {
            while (found.next()) {
                var table = found.getString(1).toLowerCase(Locale.ROOT);
                if (!LEFT_OUT.contains(table) && !table.startsWith("flyway")) {
                    tables.add(table);
                }
            }
        }
        return tables;
    }

    private static List<String> rows(Connection connection, String table) throws SQLException {
        var rows = new ArrayList<String>();
        try (var statement = connection.createStatement();
                var found = statement.executeQuery("select * from " + table)) {
            int columns = found.getMetaData().getColumnCount();
            while (found.next()) {
                var row = new ArrayList<String>();
                for (int column = 1; column <= columns; column++) {
                    row.add(found.getString(column));
                }
                rows.add(row.toString());
            }
        }
        rows.sort(null);
        return rows;
    }
}
