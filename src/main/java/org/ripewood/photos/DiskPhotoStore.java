package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Files in a folder, two levels of 256 folders each so that none gets too full. Several services
 * may share the folder: no name is ever written twice.
 */
@ApplicationScoped
class DiskPhotoStore implements PhotoStore {

    private static final String KEPT = ".jpg";
    private static final String DRAFT = ".draft";

    private final Path folder;

    DiskPhotoStore(@ConfigProperty(name = "ripewood.photos.folder") String folder) {
        this.folder = Path.of(folder).toAbsolutePath();
    }

    /** Written beside, forced to disk and then given its name: nobody ever reads half a photo. */
    @Override
    public void put(String key, byte[] bytes) throws IOException {
        Files.createDirectories(shelf(key), onlyOwner("rwx------"));
        var draft = file(key, DRAFT);
        try {
            write(draft, bytes);
            Files.move(draft, file(key, KEPT), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(draft);
        }
        forceNames(List.of(shelf(key), upperShelf(key), folder));
    }

    private static void write(Path draft, byte[] bytes) throws IOException {
        try (var channel =
                FileChannel.open(
                        draft,
                        Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                        onlyOwner("rw-------"))) {
            var left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** A name is on disk only once its folder is, and a new folder's only once the one above is. */
    private static void forceNames(List<Path> folders) throws IOException {
        if (!posix()) {
            // elsewhere folders cannot be opened
            return;
        }
        for (var names : folders) {
            try (var channel = FileChannel.open(names, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    @Override
    public InputStream open(String key) throws IOException {
        return Files.newInputStream(file(key, KEPT));
    }

    @Override
    public void remove(String key) throws IOException {
        Files.deleteIfExists(file(key, KEPT));
    }

    @Override
    public List<String> keptBefore(Instant moment) throws IOException {
        var keys = new ArrayList<String>();
        if (!Files.isDirectory(folder)) {
            return keys;
        }
        try (var files = Files.walk(folder, 3)) {
            for (var file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                sort(file, moment, keys);
            }
        }
        return keys;
    }

    private static void sort(Path file, Instant moment, List<String> keys) throws IOException {
        var name = file.getFileName().toString();
        var key = name.replaceFirst("\\.[a-z]+$", "");
        if (!FileKeys.isKey(key) || !isBefore(file, moment)) {
            // not ours, or perhaps still being worked on
            return;
        }
        if (name.endsWith(KEPT)) {
            keys.add(key);
        } else if (name.endsWith(DRAFT)) {
            Files.deleteIfExists(file);
        }
    }

    /** One that another service has just taken away is no longer anybody's business. */
    private static boolean isBefore(Path file, Instant moment) throws IOException {
        try {
            return Files.getLastModifiedTime(file).toInstant().isBefore(moment);
        } catch (NoSuchFileException gone) {
            return false;
        }
    }

    private Path file(String key, String ending) {
        return shelf(key).resolve(key + ending);
    }

    private Path shelf(String key) {
        return upperShelf(key).resolve(key.substring(2, 4));
    }

    private Path upperShelf(String key) {
        if (!FileKeys.isKey(key)) {
            throw new IllegalArgumentException("expected a key of 32 hex digits, found " + key);
        }
        return folder.resolve(key.substring(0, 2));
    }

    private static boolean posix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    private static FileAttribute<?>[] onlyOwner(String rights) {
        return posix()
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
                }
                : new FileAttribute<?>[0];
    }
}
