package org.ripewood.course;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** All content files as read and held against their schemas, by kind and code. */
final class ContentDocuments {

    /** A lesson's text below its front matter. */
    record Body(String text, int firstLine) {}

    private final Map<ContentKind, SortedMap<String, Document>> documents =
            new EnumMap<>(ContentKind.class);
    private final Map<ContentKind, SortedSet<String>> codes = new EnumMap<>(ContentKind.class);
    private final Map<String, Body> bodies = new TreeMap<>();
    private final SortedMap<String, LessonPicture> pictures = new TreeMap<>();

    private ContentDocuments() {
        for (var kind : ContentKind.values()) {
            documents.put(kind, new TreeMap<>());
            codes.put(kind, new TreeSet<>());
        }
    }

    /** Reads every file; those that are no YAML are only among the faults. */
    static ContentDocuments read(ContentFiles files, Schemas schemas, Faults faults) {
        var shelf = new ContentDocuments();
        files.bytesByPath().forEach((path, bytes) -> shelf.put(path, bytes, schemas, faults));
        for (var kind : ContentKind.values()) {
            if (kind.single()
                    && !kind.optional()
                    && !files.bytesByPath().containsKey(kind.pattern())) {
                faults.add(kind.pattern(), 0, "no such file", "the file " + kind.pattern());
            }
        }
        return shelf;
    }

    private void put(String path, byte[] bytes, Schemas schemas, Faults faults) {
        if (PictureCheck.isIn(path)) {
            new PictureCheck(faults)
                    .check(path, bytes)
                    .ifPresent(picture -> pictures.put(picture.name(), picture));
            return;
        }
        ContentKind.of(path)
                .ifPresentOrElse(
                        kind -> put(kind, path, bytes, schemas, faults),
                        () -> tellUnknown(path, faults));
    }

    /** The pictures of lessons by name. */
    SortedMap<String, LessonPicture> pictures() {
        return pictures;
    }

    private static void tellUnknown(String path, Faults faults) {
        var patterns = new StringBuilder();
        for (var kind : ContentKind.values()) {
            patterns.append(patterns.isEmpty() ? "" : ", ").append(kind.pattern());
        }
        faults.add(path, 0, "a file nobody reads", "one of " + patterns);
    }

    private void put(ContentKind kind, String path, byte[] bytes, Schemas schemas, Faults faults) {
        codes(kind).add(kind.code(path));
        var text = decode(path, bytes, faults);
        if (text == null) {
            return;
        }
        var document =
                kind == ContentKind.LESSON
                        ? frontMatter(path, text, faults)
                        : YamlReader.read(path, text, 0, faults);
        if (document != null) {
            schemas.check(kind, document, faults);
            all(kind).put(kind.code(path), document);
        }
    }

    private static @Nullable String decode(String path, byte[] bytes, Faults faults) {
        try {
            var text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            faults.add(path, 0, "bytes that are no UTF-8", "UTF-8 text");
            return null;
        }
    }

    private @Nullable Document frontMatter(String path, String text, Faults faults) {
        var lines = text.lines().toList();
        var end = lines.isEmpty() ? -1 : lines.subList(1, lines.size()).indexOf("---") + 1;
        if (end < 1 || !lines.get(0).equals("---")) {
            faults.add(
                    path,
                    1,
                    lines.isEmpty() ? "nothing" : "no front matter",
                    "front matter between two lines of ---");
            return null;
        }
        bodies.put(
                ContentKind.LESSON.code(path),
                new Body(String.join("\n", lines.subList(end + 1, lines.size())), end + 2));
        return YamlReader.read(path, String.join("\n", lines.subList(1, end)), 1, faults);
    }

    /** The documents of a kind by code, in the order of the codes. */
    SortedMap<String, Document> all(ContentKind kind) {
        return of(kind, documents);
    }

    /** What the one list of a kind holds; nothing when it could not be read. */
    List<Part> entries(ContentKind kind, String list) {
        return all(kind).values().stream().flatMap(one -> one.top().each(list).stream()).toList();
    }

    /** The codes of a kind, those of files that could not be read among them. */
    SortedSet<String> codes(ContentKind kind) {
        return of(kind, codes);
    }

    private static <T> T of(ContentKind kind, Map<ContentKind, T> byKind) {
        var found = byKind.get(kind);
        if (found == null) {
            throw new IllegalStateException("no shelf for " + kind);
        }
        return found;
    }

    /** A lesson's text; empty when it could not be read. */
    Body body(String lesson) {
        return bodies.getOrDefault(lesson, new Body("", 0));
    }
}
