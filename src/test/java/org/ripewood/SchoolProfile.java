package org.ripewood;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/**
 * A fixed day, a database of its own, the content in a folder that a test may edit, and queries
 * counted.
 */
public class SchoolProfile implements QuarkusTestProfile {

    public static final Path CONTENT =
            Path.of("target", "school-content-" + System.getProperty("ripewood.fork", "1"));

    /** Laid over it; empty until a test puts a file there, and empty again after it. */
    public static final Path ADDED =
            Path.of("target", "school-added-" + System.getProperty("ripewood.fork", "1"));

    @Override
    public Map<String, String> getConfigOverrides() {
        copyContent();
        var settings = new HashMap<String, String>(Database.named("school"));
        settings.put("ripewood.today", School.TODAY.toString());
        settings.put("ripewood.content", CONTENT.toAbsolutePath().toString());
        settings.put("ripewood.content.added", ADDED.toAbsolutePath().toString());
        settings.put("quarkus.hibernate-orm.statistics", "true");
        return settings;
    }

    private static void copyContent() {
        var from = Path.of("course-content");
        try (var files = Files.walk(from)) {
            Files.createDirectories(ADDED);
            for (var file : (Iterable<Path>) files::iterator) {
                var to = CONTENT.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.write(to, Files.readAllBytes(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
