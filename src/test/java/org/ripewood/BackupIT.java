package org.ripewood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README says of backups, done while the service runs, and undone by restoring. */
class BackupIT {

    private static final String NOTE = "seen before the backup";

    @TempDir Path data;
    @TempDir Path elsewhere;

    @Test
    void aRunningH2IsBackedUpAndRestored() throws Exception {
        Path file;
        try (var service = RunningJar.onH2(data)) {
            var tree = write(service, NOTE);
            file = whileOthersWrite(service, tree, () -> backup(service));
            write(service, "seen after the backup");
        }
        unzip(file, elsewhere);
        Files.copy(data.resolve("demo-sign-in.txt"), elsewhere.resolve("demo-sign-in.txt"));
        try (var restored = RunningJar.onH2(elsewhere)) {
            assertHolds(restored);
        }
    }

    @Test
    void aRunningPostgresIsBackedUpAndRestored() throws Exception {
        Database.renew("demo");
        var port = Database.server().getPort();
        var file = elsewhere.resolve("school.dump");
        try (var service = RunningJar.onPostgres(data, port)) {
            var tree = write(service, NOTE);
            whileOthersWrite(
                    service,
                    tree,
                    () -> {
                        run("pg_dump", "-Fc", "-f", file.toString(), address(port));
                        return file;
                    });
            write(service, "seen after the backup");
        }
        Database.renew("demo");
        run("pg_restore", "--no-owner", "-d", address(port), file.toString());
        try (var restored = RunningJar.onPostgres(data, port)) {
            assertHolds(restored);
        }
    }

    private interface Backup {
        Path make() throws Exception;
    }

    /** A backup is of one moment, whatever goes on meanwhile. */
    private static Path whileOthersWrite(RunningJar service, long tree, Backup backup)
            throws Exception {
        var student = DemoStudent.signIn(service, "anrike");
        var over = new AtomicBoolean();
        var writer = Executors.newSingleThreadExecutor();
        var writing =
                writer.submit(
                        () -> {
                            while (!over.get()) {
                                observe(student, tree, "seen meanwhile");
                            }
                            return over.get();
                        });
        var made = backup.make();
        over.set(true);
        assertThat(writing.get(1, TimeUnit.MINUTES)).isTrue();
        writer.shutdown();
        return made;
    }

    private Path backup(RunningJar service) throws Exception {
        var registrar = DemoStudent.signIn(service, "ilsabet");
        var made = registrar.make("/api/v1/backups", "{}");
        return data.resolve("backups").resolve(made.path("file").asText());
    }

    private static long write(RunningJar service, String note) throws Exception {
        var student = DemoStudent.signIn(service, "anrike");
        var tree = student.read("/api/v1/trees").path("items").path(0).path("id").asLong();
        observe(student, tree, note);
        return tree;
    }

    private static void observe(DemoStudent student, long tree, String note) throws Exception {
        student.make(
                "/api/v1/trees/" + tree + "/observations",
                """
                {"fact": "soil_moist", "value": "yes", "observedOn": "2026-04-01", "note": "%s"}
                """
                        .formatted(note));
    }

    private static void assertHolds(RunningJar restored) throws Exception {
        var student = DemoStudent.signIn(restored, "anrike");
        var tree = student.read("/api/v1/trees").path("items").path(0).path("id").asLong();
        var notes =
                student.read("/api/v1/trees/" + tree + "/observations?size=200")
                        .path("items")
                        .findValuesAsText("note");
        assertThat(notes).contains(NOTE).doesNotContain("seen after the backup");
        observe(student, tree, "seen after restoring");
    }

    private static void unzip(Path file, Path folder) throws IOException {
        try (var zip = new ZipInputStream(Files.newInputStream(file))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Files.copy(zip, folder.resolve(entry.getName()));
            }
        }
    }

    private static String address(int port) {
        return "postgresql://postgres@localhost:%d/demo".formatted(port);
    }

    private static void run(String... command) throws Exception {
        var process = new ProcessBuilder(command).redirectErrorStream(true).start();
        var told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as("%s%n%s", List.of(command), told).isZero();
    }
}
