package org.ripewood.transfer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** A text file only its owner may read; it never lies open, not even while it is written. */
final class OwnerFile {

    private static final Set<PosixFilePermission> OWNER_ONLY =
            PosixFilePermissions.fromString("rw-------");

    private OwnerFile() {}

    static void write(Path file, String text) throws IOException {
        var folder = file.toAbsolutePath().resolveSibling("");
        Files.createDirectories(folder);
        var draft = Files.createTempFile(folder, file.getFileName() + ".", ".new", rights(folder));
        try {
            Files.writeString(draft, text);
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static FileAttribute<?>[] rights(Path folder) {
        // Where rights are not POSIX, those of the folder have to do.
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
                : new FileAttribute<?>[0];
    }
}
