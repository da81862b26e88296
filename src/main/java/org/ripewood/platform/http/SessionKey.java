package org.ripewood.platform.http;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;

/** A secret in a file that only its owner may read; made when there is none. */
final class SessionKey {

    private static final int BYTES = 32;

    /** The framework takes no shorter one. */
    private static final int LEAST_CHARACTERS = 16;

    private final Path file;

    SessionKey(Path folder) {
        this.file = folder.resolve("session.key");
    }

    String read() {
        try {
            if (!Files.exists(file)) {
                make();
            }
            var key = Files.readString(file).strip();
            if (key.length() < LEAST_CHARACTERS) {
                throw new IllegalStateException(
                        "The session key in %s is too short: expected %d characters, found %d."
                                        .formatted(file, LEAST_CHARACTERS, key.length())
                                + " Maybe delete the file; a new one is made at the next start.");
            }
            return key;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read or make the session key " + file, e);
        }
    }

    /** Written beside and then given its name, so that nobody ever reads half a key. */
    private void make() throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent(), onlyOwner("rwx------"));
        var secret = new byte[BYTES];
        new SecureRandom().nextBytes(secret);
        var draft =
                Files.createTempFile(
                        file.toAbsolutePath().getParent(),
                        "session",
                        ".draft",
                        onlyOwner("rw-------"));
        try {
            Files.writeString(draft, Base64.getEncoder().encodeToString(secret));
            Files.move(draft, file);
        } catch (FileAlreadyExistsException e) {
            // another process was quicker; its key is as good
            Files.deleteIfExists(draft);
        }
    }

    private static FileAttribute<?>[] onlyOwner(String rights) {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
                }
                : new FileAttribute<?>[0];
    }
}
