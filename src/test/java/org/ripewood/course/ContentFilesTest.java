package org.ripewood.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("fast")
class ContentFilesTest {

    private static final long SEED = 20_010_417;

    @TempDir Path folder;

    private ContentFiles read() throws IOException {
        return ContentFiles.in(folder, new Faults());
    }

    private void write(String name, String text) throws IOException {
        var file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void theRevisionChangesWithAnyByte() {
        var files = ContentFiles.inJar();
        var revision = files.revision();
        assertThat(revision).matches("[0-9a-f]{12}");
        var dice = new SplittableRandom(SEED);
        var paths = files.bytesByPath().keySet().stream().toList();
        for (int i = 0; i < 200; i++) {
            var path = paths.get(dice.nextInt(paths.size()));
            var bytes = files.bytesByPath().get(path).clone();
            var at = dice.nextInt(bytes.length);
            bytes[at] ^= (byte) (1 << dice.nextInt(8));
            var edited = new TreeMap<>(files.bytesByPath());
            edited.put(path, bytes);
            assertThat(new ContentFiles(edited).revision())
                    .as("seed %d, byte %d of %s", SEED, at, path)
                    .isNotEqualTo(revision);
        }
    }

    @Test
    void theRevisionChangesWithAName() throws IOException {
        write("species/a.yaml", "one");
        var before = read().revision();
        Files.move(folder.resolve("species/a.yaml"), folder.resolve("species/b.yaml"));
        assertThat(read().revision()).isNotEqualTo(before);
    }

    @Test
    void aByteCannotMoveToTheNextFileUnseen() throws IOException {
        write("species/a.yaml", "one");
        write("species/b.yaml", "two");
        var before = read().revision();
        write("species/a.yaml", "onet");
        write("species/b.yaml", "wo");
        assertThat(read().revision()).isNotEqualTo(before);
    }

    @Test
    void theSameFilesElsewhereHaveTheSameRevision() throws IOException {
        for (var file : ContentFiles.inJar().bytesByPath().entrySet()) {
            var to = folder.resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.write(to, file.getValue());
        }
        assertThat(read().revision()).isEqualTo(ContentFiles.inJar().revision());
    }

    @Test
    void hiddenFilesSpareCopiesAndSchemasAreNoContent() throws IOException {
        write("species/a.yaml", "one");
        write("species/a.yaml~", "old");
        write("species/.a.yaml.swp", "half");
        write(".git/config", "x");
        write("schema/species.schema.json", "{}");
        assertThat(read().bytesByPath()).containsOnlyKeys("species/a.yaml");
    }

    @Test
    void aFileTooLargeIsNotReadAndTold() throws IOException {
        write("species/a.yaml", "x".repeat((int) ContentFiles.MOST_BYTES + 1));
        var faults = new Faults();
        assertThat(ContentFiles.in(folder, faults).bytesByPath()).isEmpty();
        assertThat(faults.all())
                .containsExactly(
                        new ContentFault(
                                "species/a.yaml", 0, "1000001 bytes", "at most 1000000 bytes"));
    }
}
