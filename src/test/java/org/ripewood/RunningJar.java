package org.ripewood;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.regex.Pattern;

/** The packaged service, started as a user would start it, on a data folder of its own. */
final class RunningJar implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final Path JAR = Path.of("target/quarkus-app/quarkus-run.jar");
    private static final Path POSTGRES_JAR = Path.of("target/pg/quarkus-run.jar");

    private final Process process;
    private final Path data;
    private final Path log;
    private final URI address;

    private RunningJar(Process process, Path data, Path log, URI address) {
        this.process = process;
        this.data = data;
        this.log = log;
        this.address = address;
    }

    /** Starts it with the demo school, staying on one day so that the seasons do not move. */
    static RunningJar withDemoSchool(Path data, LocalDate today) throws Exception {
        return start(JAR, data, Map.of("RIPEWOOD_TODAY", today.toString()));
    }

    /** Starts it with settings of its own, as environment variables. */
    static RunningJar started(Path data, Map<String, String> settings) throws Exception {
        return start(JAR, data, settings);
    }

    /** The jar that keeps its records in a file beside it. */
    static RunningJar onH2(Path data) throws Exception {
        return start(JAR, data, Map.of());
    }

    /** The jar built for PostgreSQL, on a database of that server named demo. */
    static RunningJar onPostgres(Path data, int port) throws Exception {
        return start(
                POSTGRES_JAR,
                data,
                Map.of(
                        "RIPEWOOD_POSTGRESQL",
                        "localhost:" + port,
                        "RIPEWOOD_POSTGRESQL_USER",
                        "postgres",
                        "RIPEWOOD_POSTGRESQL_PASSWORD",
                        "postgres"));
    }

    private static RunningJar start(Path jar, Path data, Map<String, String> settings)
            throws Exception {
        int port = freePort();
        var log = data.resolve("service-%d.log".formatted(port));
        var builder =
                new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+ExitOnOutOfMemoryError",
                        "-jar",
                        jar.toAbsolutePath().toString());
        var environment = builder.environment();
        environment.put("RIPEWOOD_DEMO", "true");
        environment.put("RIPEWOOD_DATA", data.toString());
        environment.put("QUARKUS_HTTP_PORT", String.valueOf(port));
        // one student sends more than a person would in a day
        environment.put("RIPEWOOD_PHOTOS_MOST_A_DAY", "100000");
        environment.putAll(settings);
        builder.redirectErrorStream(true).redirectOutput(log.toFile());
        var running =
                new RunningJar(builder.start(), data, log, URI.create("http://127.0.0.1:" + port));
        running.awaitReady();
        return running;
    }

    /** Ends it between two instructions, as a power cut of the process would. */
    void kill() {
        process.destroyForcibly();
        process.onExit().join();
    }

    int port() {
        return address.getPort();
    }

    /** The same service, reached through a proxy on that port. */
    RunningJar through(int port) {
        return new RunningJar(process, data, log, URI.create("http://127.0.0.1:" + port));
    }

    /** An address of it. */
    String at(String path) {
        return address.resolve(path).toString();
    }

    /** The password the sign-in sheet gives for a login. */
    String passwordOf(String login) throws IOException {
        var sheet = Files.readString(data.resolve("demo-sign-in.txt"));
        var line =
                Pattern.compile("name " + Pattern.quote(login) + " +password (\\S+)")
                        .matcher(sheet);
        if (!line.find()) {
            throw new IllegalStateException("no " + login + " on the sheet:\n" + sheet);
        }
        return line.group(1);
    }

    String log() throws IOException {
        return Files.readString(log);
    }

    private void awaitReady() throws Exception {
        var client = HttpClient.newHttpClient();
        var request = HttpRequest.newBuilder(address.resolve("/q/health/ready")).build();
        for (var until = Instant.now().plus(PATIENCE); Instant.now().isBefore(until); ) {
            if (!process.isAlive()) {
                throw new IllegalStateException("the service ended:\n" + log());
            }
            try {
                if (client.send(request, HttpResponse.BodyHandlers.discarding()).statusCode()
                        == 200) {
                    return;
                }
            } catch (IOException notYet) {
                // It does not listen yet.
            }
            Thread.sleep(200);
        }
        close();
        throw new IllegalStateException("the service did not get ready:\n" + log());
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    @Override
    public void close() {
        process.destroy();
        process.onExit().join();
    }
}
