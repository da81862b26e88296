package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** The content inside the jar with some edits, as a careless writer would make them. */
final class Editing {

    private static final ContentReading READING = new ContentReading(UnaryOperator.identity());

    private final SortedMap<String, byte[]> bytes =
            new TreeMap<>(ContentFiles.inJar().bytesByPath());

    /** Puts one text in the place of another, which must be there. */
    Editing replace(String path, String old, String with) {
        var text = text(path);
        assertThat(text).as("%s holds the text to edit", path).contains(old);
        return write(path, text.replaceFirst(java.util.regex.Pattern.quote(old), with));
    }

    Editing write(String path, String text) {
        bytes.put(path, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    Editing write(String path, byte[] content) {
        bytes.put(path, content);
        return this;
    }

    Editing remove(String path) {
        bytes.remove(path);
        return this;
    }

    String text(String path) {
        var content = bytes.get(path);
        assertThat(content).as(path).isNotNull();
        return new String(content, StandardCharsets.UTF_8);
    }

    /** The line, from 1, on which a text first stands. */
    int lineOf(String path, String marker) {
        var text = text(path);
        assertThat(text).contains(marker);
        return 1
                + (int)
                        text.substring(0, text.indexOf(marker))
                                .chars()
                                .filter(c -> c == '\n')
                                .count();
    }

    /** The line on which a text last stands. */
    int lastLineOf(String path, String marker) {
        var text = text(path);
        return 1
                + (int)
                        text.substring(0, text.lastIndexOf(marker))
                                .chars()
                                .filter(c -> c == '\n')
                                .count();
    }

    ContentFiles files() {
        return new ContentFiles(bytes);
    }

    ContentReading.Outcome read() {
        return READING.read(files(), new Faults());
    }

    List<ContentFault> faults() {
        return read().faults();
    }
}
