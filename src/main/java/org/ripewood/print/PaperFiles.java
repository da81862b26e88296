package org.ripewood.print;

import java.io.IOException;
import java.io.UncheckedIOException;

/** Files of our own that go into every paper. */
final class PaperFiles {

    private PaperFiles() {}

    /** What stands in a file of the jar. */
    static byte[] bytes(String path) {
        try (var in = PaperFiles.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException(path + " is missing from the jar");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
