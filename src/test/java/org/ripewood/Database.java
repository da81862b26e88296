package org.ripewood;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.SQLException;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;

/**
 * Which database the service is tested on: H2 in memory, or, with {@code
 * -Dquarkus.datasource.db-kind=postgresql}, a PostgreSQL that is started for it. Each start of the
 * service finds an empty database.
 */
@WithTestResource(value = Database.class, scope = TestResourceScope.GLOBAL)
public class Database implements QuarkusTestResourceLifecycleManager {

    private static final AtomicInteger COUNT = new AtomicInteger();
    private static @Nullable EmbeddedPostgres server;

    /** Whether the tests run on PostgreSQL. */
    static boolean isPostgres() {
        return "postgresql".equals(System.getProperty("quarkus.datasource.db-kind"));
    }

    /**
     * Settings that give a test profile a database of its own in memory; on PostgreSQL each start
     * has one anyway.
     */
    public static Map<String, String> named(String name) {
        return isPostgres()
                ? Map.of()
                : Map.of(
                        "quarkus.datasource.jdbc.url",
                        "jdbc:h2:mem:%s;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
                                .formatted(name));
    }

    @Override
    public Map<String, String> start() {
        return isPostgres() ? settings(newDatabase()) : Map.of();
    }

    private static Map<String, String> settings(String name) {
        return Map.of(
                "quarkus.datasource.jdbc.url",
                "jdbc:postgresql://localhost:%d/%s".formatted(server().getPort(), name),
                "quarkus.datasource.username",
                "postgres",
                "quarkus.datasource.password",
                "postgres");
    }

    private static String newDatabase() {
        return newDatabase("school" + COUNT.incrementAndGet());
    }

    /** An empty database of that name on the server of the tests. */
    static String newDatabase(String name) {
        try (var connection = server().getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("create database " + name);
            return name;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same, after whatever was there before is dropped. */
    static void renew(String name) throws SQLException {
        try (var connection = server().getPostgresDatabase().getConnection();
                var statement = connection.createStatement()) {
            statement.execute("drop database if exists " + name + " with (force)");
        }
        newDatabase(name);
    }

    /** The server, started once and ended with the tests' JVM. */
    static synchronized EmbeddedPostgres server() {
        if (server == null) {
            try {
                server = EmbeddedPostgres.builder().start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return server;
    }

    @Override
    public void stop() {
        // The next start takes a database of its own.
    }
}
