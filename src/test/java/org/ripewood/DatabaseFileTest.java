package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.zip.GZIPInputStream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A school's database as the service keeps it, in a file of H2: after the session that made the
 * tables is closed, as a pool closes an idle one, rows can still be written to every table with a
 * check. H2 2.4.240 refuses all of them (error 23514, caused by 90098).
 */
class DatabaseFileTest {

    private static final Properties SETTINGS = settings();

    /** Values that the checks of a table ask for, where any value of the type would not do. */
    private static final Map<String, List<Map<String, String>>> ROWS =
            Map.of(
                    "observation", List.of(Map.of("number_value", "1")),
                    "rubric_judgement", List.of(Map.of("tree_id", "1", "draft_of", "'d'")),
                    "photo", List.of(Map.of("file_key", "'f'", "thumbnail_key", "'t'")),
                    "stock_movement", List.of(Map.of("kind", "'COUNTED'")),
                    "stock_item", List.of(container(), wire()));

    private static final Pattern WORDS_OF_A_CHECK =
            Pattern.compile("\"(\\w+)\" IN\\(\\s*'([^']+)'");

    @TempDir Path folder;

    /** Who made the file. */
    enum Made {
        BY_THIS_H2,
        BY_H2_2_4_240
    }

    @ParameterizedTest
    @EnumSource(Made.class)
    void rowsAreWrittenAfterTheSessionThatMadeTheTablesIsClosed(Made made) throws Exception {
        if (made == Made.BY_H2_2_4_240) {
            unpack(folder.resolve("ripewood.mv.db"));
        }
        try (var writing = open()) {
            // opened first, so that the database stays open while the other session ends
            migrate();
            var tables = tablesWithChecks(writing);
            assertThat(tables).hasSizeGreaterThan(20);
            run(writing, "set referential_integrity false");
            for (var table : tables.entrySet()) {
                for (var row : ROWS.getOrDefault(table.getKey(), List.of(Map.of()))) {
                    run(writing, insert(writing, table.getKey(), table.getValue(), row));
                }
            }
        }
    }

    private static Map<String, String> container() {
        var row = new LinkedHashMap<>(Map.of("kind", "'CONTAINER'", "name_key", "'pot'"));
        row.putAll(Map.of("used_as", "'SHOW'", "outline", "'OVAL'", "metal", "'COPPER'"));
        row.putAll(Map.of("top_length_mm", "9", "top_width_mm", "9", "bottom_length_mm", "9"));
        row.putAll(Map.of("bottom_width_mm", "9", "depth_mm", "9", "lip_mm", "1"));
        return row;
    }

    private static Map<String, String> wire() {
        return Map.of("id", "2", "kind", "'WIRE'", "metal", "'COPPER'", "gauge_mm", "1");
    }

    /**
     * H2 would write the values of a statement that fails beside the database, and never clear it.
     */
    @Test
    void whatIsRefusedIsWrittenNowhere() throws Exception {
        try (var writing = open()) {
            run(writing, "create table card (name varchar(20) primary key)");
            run(writing, "insert into card values ('Ines')");
            assertThatThrownBy(() -> run(writing, "insert into card values ('Ines')"))
                    .hasCauseInstanceOf(SQLException.class);
            assertThatThrownBy(() -> run(writing, "insert into no_such values ('Ines')"))
                    .hasCauseInstanceOf(SQLException.class);
        }
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactly("ripewood.mv.db");
        }
    }

    private static Properties settings() {
        try (var file =
                Files.newInputStream(Path.of("src/main/resources/application.properties"))) {
            var settings = new Properties();
            settings.load(file);
            return settings;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void unpack(Path file) throws IOException {
        try (var kept =
                        DatabaseFileTest.class.getResourceAsStream(
                                "/databases/made-by-h2-2.4.240.mv.db.gz");
                var unpacked = new GZIPInputStream(kept)) {
            Files.copy(unpacked, file);
        }
    }

    /** The service's own address of the database, in this folder. */
    private String address() {
        return SETTINGS.getProperty("quarkus.datasource.jdbc.url")
                .replace("${ripewood.data:./data}", folder.toString())
                .replaceAll("\\$\\{ripewood\\.database.*\\}", "ripewood");
    }

    private Connection open() throws SQLException {
        return DriverManager.getConnection(
                address(),
                SETTINGS.getProperty("quarkus.datasource.username"),
                SETTINGS.getProperty("quarkus.datasource.password"));
    }

    private void migrate() {
        Flyway.configure()
                .dataSource(
                        address(),
                        SETTINGS.getProperty("quarkus.datasource.username"),
                        SETTINGS.getProperty("quarkus.datasource.password"))
                .outOfOrder(true)
                .load()
                .migrate();
    }

    /** Every table that has a check, and what its checks ask for. */
    private static Map<String, String> tablesWithChecks(Connection database) throws SQLException {
        var tables = new LinkedHashMap<String, String>();
        try (var statement = database.createStatement();
                var found =
                        statement.executeQuery(
                                "select t.table_name, c.check_clause"
                                        + " from information_schema.table_constraints t"
                                        + " join information_schema.check_constraints c"
                                        + " on c.constraint_name = t.constraint_name"
                                        + " where t.table_schema = 'public'"
                                        + " and t.constraint_type = 'CHECK' order by 1")) {
            while (found.next()) {
                tables.merge(found.getString(1), found.getString(2), (a, b) -> a + " " + b);
            }
        }
        return tables;
    }

    private static String insert(
            Connection database, String table, String checks, Map<String, String> said)
            throws SQLException {
        var values = new LinkedHashMap<>(needed(database, table));
        var words = WORDS_OF_A_CHECK.matcher(checks);
        while (words.find()) {
            values.put(words.group(1), "'" + words.group(2) + "'");
        }
        values.putAll(said);
        return "insert into %s (%s) values (%s)"
                .formatted(
                        table,
                        String.join(", ", values.keySet()),
                        String.join(", ", values.values()));
    }

    /** A value of the type for each column that needs one. */
    private static Map<String, String> needed(Connection database, String table)
            throws SQLException {
        var values = new LinkedHashMap<String, String>();
        try (var ask =
                database.prepareStatement(
                        "select column_name, data_type from information_schema.columns"
                                + " where table_name = ? and is_nullable = 'NO'")) {
            ask.setString(1, table);
            var found = ask.executeQuery();
            while (found.next()) {
                values.put(found.getString(1), valueOf(found.getString(2)));
            }
        }
        return values;
    }

    private static String valueOf(String type) {
        return switch (type) {
            case "character varying" -> "'x'";
            case "boolean" -> "true";
            case "date" -> "date '2026-01-01'";
            case "timestamp with time zone" -> "now()";
            default -> "1";
        };
    }

    private static void run(Connection database, String sql) throws SQLException {
        try (var statement = database.createStatement()) {
            statement.executeUpdate(sql);
        } catch (SQLException e) {
            throw new AssertionError(sql, e);
        }
    }
}
