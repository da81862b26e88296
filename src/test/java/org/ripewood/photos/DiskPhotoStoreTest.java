package org.ripewood.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files are whole or not there, and their names come from nobody. */
@Tag("fast")
class DiskPhotoStoreTest {

    private static final byte[] BYTES = {1, 2, 3};

    @TempDir Path folder;
    private DiskPhotoStore store;

    @BeforeEach
    void open() {
        store = new DiskPhotoStore(folder.toString());
    }

    @Test
    void whatIsPutIsReadBackUntilItIsTakenAway() throws IOException {
        var key = FileKeys.fresh();
        store.put(key, BYTES);
        try (var stream = store.open(key)) {
            assertThat(stream.readAllBytes()).isEqualTo(BYTES);
        }
        store.remove(key);
        store.remove(key);
        assertThatThrownBy(() -> store.open(key)).isInstanceOf(NoSuchFileException.class);
    }

    @Test
    void aFileLiesTwoShelvesDownForItsOwnerAlone() throws IOException {
        var key = "ab12" + "0".repeat(28);
        store.put(key, BYTES);
        var file = folder.resolve("ab").resolve("12").resolve(key + ".jpg");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(files()).containsExactly(file);
    }

    @Test
    void nothingIsLeftOfAFileThatCannotBeKept() throws IOException {
        var key = FileKeys.fresh();
        // where the shelf should stand lies a file
        Files.write(folder.resolve(key.substring(0, 2)), BYTES);
        assertThatThrownBy(() -> store.put(key, BYTES))
                .isInstanceOfAny(FileAlreadyExistsException.class, IOException.class);
        assertThat(files()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "../../etc/passwd", "0123", "ZZ345678901234567890123456789012"})
    void onlyAKeyNamesAFile(String key) {
        assertThatThrownBy(() -> store.put(key, BYTES))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> store.open(key)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> store.remove(key)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void oldKeysAreToldOldDraftsClearedAndStrangersLeftAlone() throws IOException {
        var settled = Instant.parse("2026-01-02T00:00:00Z");
        var old = kept(settled.minusSeconds(1));
        kept(settled);
        var draft = named(FileKeys.fresh() + ".draft", settled.minusSeconds(1));
        var youngDraft = named(FileKeys.fresh() + ".draft", settled);
        var stranger = named("notes.jpg", settled.minusSeconds(1));
        assertThat(store.keptBefore(settled)).containsExactly(old);
        assertThat(draft).doesNotExist();
        assertThat(youngDraft).exists();
        assertThat(stranger).exists();
    }

    @Test
    void aFolderThatIsNotThereYetHoldsNothing() throws IOException {
        var none = new DiskPhotoStore(folder.resolve("none").toString());
        assertThat(none.keptBefore(Instant.MAX)).isEmpty();
    }

    private String kept(Instant at) throws IOException {
        var key = FileKeys.fresh();
        store.put(key, BYTES);
        var file =
                files().stream()
                        .filter(found -> found.toString().contains(key))
                        .findFirst()
                        .orElseThrow();
        Files.setLastModifiedTime(file, FileTime.from(at));
        return key;
    }

    private Path named(String name, Instant at) throws IOException {
        var shelf = Files.createDirectories(folder.resolve("aa").resolve("bb"));
        var file = Files.write(shelf.resolve(name), BYTES);
        Files.setLastModifiedTime(file, FileTime.from(at));
        return file;
    }

    private List<Path> files() throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }
}
