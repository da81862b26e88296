package org.ripewood.transfer;

import io.quarkus.runtime.util.ClassPathUtils;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;

/**
 * A school's files by their path in the folder, such as {@code trees/elm.yaml}. Its pictures are
 * held in memory until they are entered.
 *
 * @param texts by path, with slashes
 * @param pictures by name, without the folder of photos
 */
record SchoolFiles(Map<String, String> texts, Map<String, byte[]> pictures) {

    static final String TREES = "trees/";
    private static final String PHOTOS = "photos/";

    SchoolFiles {
        texts = Map.copyOf(texts);
        pictures = Map.copyOf(pictures);
    }

    /** A school without photos. */
    SchoolFiles(Map<String, String> texts) {
        this(texts, Map.of());
    }

    /** Every YAML file in a folder and the folder of trees in it, and what is in that of photos. */
    static SchoolFiles in(Path folder) throws IOException {
        var texts = new TreeMap<String, String>();
        var pictures = new TreeMap<String, byte[]>();
        try (var paths = Files.walk(folder, 2)) {
            for (var path : paths.filter(Files::isRegularFile).toList()) {
                var name = folder.relativize(path).toString().replace('\\', '/');
                if (name.endsWith(".yaml")) {
                    texts.put(name, Files.readString(path));
                } else if (name.startsWith(PHOTOS)) {
                    pictures.put(name.substring(PHOTOS.length()), Files.readAllBytes(path));
                }
            }
        }
        return new SchoolFiles(texts, pictures);
    }

    /** The demo school as it was packed, inside a jar or beside the classes. */
    static SchoolFiles demo() {
        var found = new AtomicReference<SchoolFiles>();
        try {
            // A folder cannot be asked for by every class loader; a file in it can.
            ClassPathUtils.consumeAsPaths(
                    Thread.currentThread().getContextClassLoader(),
                    "demo-data/people.yaml",
                    people -> found.set(readBeside(people)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var files = found.get();
        if (files == null) {
            throw new IllegalStateException("the demo school is not packed with the service");
        }
        return files;
    }

    private static SchoolFiles readBeside(Path people) {
        try {
            return in(people.toAbsolutePath().resolveSibling(""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
