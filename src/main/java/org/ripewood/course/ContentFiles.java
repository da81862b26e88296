package org.ripewood.course;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The bytes of all content files, by path inside the content.
 *
 * <p>Hidden files, editors' spare copies (ending in {@code ~}) and the schema folder are no
 * content: the schemas in force are always those the program was built with.
 *
 * @param added paths of those that were laid over the others
 */
record ContentFiles(SortedMap<String, byte[]> bytesByPath, Set<String> added) {

    /** Resource folder of the content that travels with the program. */
    static final String IN_JAR = "course-content";

    /** Larger than any text a person writes; what is larger is something else. */
    static final long MOST_BYTES = 1_000_000;

    private static final String LANDMARK = IN_JAR + "/stages.yaml";
    private static final int REVISION_DIGITS = 12;
    private static final int DEPTH = 8;

    ContentFiles {
        bytesByPath = Collections.unmodifiableSortedMap(new TreeMap<>(bytesByPath));
        added = Collections.unmodifiableSortedSet(new TreeSet<>(added));
    }

    ContentFiles(SortedMap<String, byte[]> bytesByPath) {
        this(bytesByPath, Set.of());
    }

    /** These files with others laid over them: what has the same path is replaced whole. */
    ContentFiles under(ContentFiles over) {
        var all = new TreeMap<>(bytesByPath);
        all.putAll(over.bytesByPath);
        return new ContentFiles(all, over.bytesByPath.keySet());
    }

    /** The content that travels with the program. */
    static ContentFiles inJar() {
        var landmark = ContentFiles.class.getClassLoader().getResource(LANDMARK);
        if (landmark == null) {
            throw new IllegalStateException("the program was built without " + LANDMARK);
        }
        try {
            return landmark.getProtocol().equals("jar")
                    ? insideJar(landmark)
                    : in(Path.of(landmark.toURI()).resolveSibling("."), new Faults());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ContentFiles insideJar(URL landmark) throws IOException, URISyntaxException {
        var url = landmark.getPath();
        var jar = Path.of(new URL(url.substring(0, url.lastIndexOf("!/"))).toURI());
        try (var files = FileSystems.newFileSystem(jar)) {
            return in(files.getPath(IN_JAR), new Faults());
        }
    }

    /** The files in a folder; what cannot be read or does not belong there is among the faults. */
    static ContentFiles in(Path folder, Faults faults) throws IOException {
        if (Files.isRegularFile(folder)) {
            throw new NotDirectoryException(folder.toString());
        }
        var bytesByPath = new TreeMap<String, byte[]>();
        try (var paths = Files.walk(folder, DEPTH, FileVisitOption.FOLLOW_LINKS)) {
            for (var path : (Iterable<Path>) paths.filter(Files::isRegularFile)::iterator) {
                var name = folder.relativize(path).toString().replace('\\', '/');
                if (isContent(name)) {
                    read(path, name, bytesByPath, faults);
                }
            }
        } catch (UncheckedIOException e) {
            // a folder inside it that cannot be opened ends the walk in this way
            throw e.getCause();
        }
        return new ContentFiles(bytesByPath);
    }

    private static boolean isContent(String name) {
        return !(name.startsWith(".")
                || name.contains("/.")
                || name.endsWith("~")
                || name.startsWith("schema/"));
    }

    private static void read(
            Path path, String name, SortedMap<String, byte[]> bytesByPath, Faults faults)
            throws IOException {
        var size = Files.size(path);
        if (size > MOST_BYTES) {
            faults.add(name, 0, size + " bytes", "at most %d bytes".formatted(MOST_BYTES));
            return;
        }
        bytesByPath.put(name, Files.readAllBytes(path));
    }

    /**
     * The revision: first 12 hexadecimal digits of the SHA-256 over every path and its bytes, in
     * the order of the paths. Lengths go in too, so that no byte can move from one file to the next
     * unseen.
     */
    String revision() {
        var digest = sha256();
        bytesByPath.forEach(
                (path, bytes) -> {
                    digest.update(
                            "%s\0%d\0"
                                    .formatted(path, bytes.length)
                                    .getBytes(StandardCharsets.UTF_8));
                    digest.update(bytes);
                });
        return HexFormat.of().formatHex(digest.digest()).substring(0, REVISION_DIGITS);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }
}
