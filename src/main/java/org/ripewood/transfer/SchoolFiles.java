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

    /** A folder of its own in that of the demo school, which is no part of it. */
    private static final String SAMPLE = "sample/";

    /** In that folder: names of the demo's trees, one a line. */
    private static final String SAMPLE_TREES = "trees.txt";

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
                if (name.startsWith(SAMPLE)) {
                    continue;
                }
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
        return packed("demo-data/people.yaml", SchoolFiles::in);
    }

    /**
     * The sample course: files of its own, and some of the demo's trees with their pictures. What
     * these trees call people and sites the sample's files have as well.
     */
    static SchoolFiles sample() {
        return packed("demo-data/people.yaml", demo -> sampleIn(demo, in(demo)));
    }

    private static SchoolFiles sampleIn(Path demo, SchoolFiles all) throws IOException {
        var folder = demo.resolve(SAMPLE);
        var texts = new TreeMap<String, String>(in(folder).texts());
        for (var line : Files.readAllLines(folder.resolve(SAMPLE_TREES))) {
            if (!line.isBlank() && !line.startsWith("#")) {
                var name = TREES + line.strip() + ".yaml";
                var tree = all.texts().get(name);
                if (tree == null) {
                    throw new IllegalStateException(
                            "the sample names no tree of the demo: " + name);
                }
                texts.put(name, tree);
            }
        }
        return new SchoolFiles(texts, all.pictures());
    }

    private interface Reading {
        SchoolFiles in(Path folder) throws IOException;
    }

    private static SchoolFiles packed(String file, Reading reading) {
        var found = new AtomicReference<SchoolFiles>();
        try {
            // A folder cannot be asked for by every class loader; a file in it can.
            ClassPathUtils.consumeAsPaths(
                    Thread.currentThread().getContextClassLoader(),
                    file,
                    beside -> found.set(readBeside(beside, reading)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var files = found.get();
        if (files == null) {
            throw new IllegalStateException("the demo school is not packed with the service");
        }
        return files;
    }

    private static SchoolFiles readBeside(Path file, Reading reading) {
        try {
            return reading.in(file.toAbsolutePath().resolveSibling(""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
