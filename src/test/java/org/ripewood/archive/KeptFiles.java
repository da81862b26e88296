package org.ripewood.archive;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The folder of photos, looked at from outside. */
@ApplicationScoped
class KeptFiles {

    private final Path folder;

    KeptFiles(@ConfigProperty(name = "ripewood.photos.folder") String folder) {
        this.folder = Path.of(folder);
    }

    Set<Path> all() throws IOException {
        var found = new TreeSet<Path>();
        if (Files.exists(folder)) {
            try (var files = Files.walk(folder)) {
                files.filter(Files::isRegularFile).forEach(found::add);
            }
        }
        return found;
    }

    Path of(String key) {
        return folder.resolve(key.substring(0, 2))
                .resolve(key.substring(2, 4))
                .resolve(key + ".jpg");
    }
}
