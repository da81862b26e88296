package org.ripewood.platform.http;

import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** Takes away at start the files of requests that a crash broke off while they came in. */
@ApplicationScoped
class UploadSweep {

    private static final Logger LOG = Logger.getLogger(UploadSweep.class);

    /** Longer than any request lasts: another service may be taking files into the same folder. */
    private static final Duration SETTLED = Duration.ofHours(1);

    private final Path folder;

    UploadSweep(@ConfigProperty(name = "quarkus.http.body.uploads-directory") String folder) {
        this.folder = Path.of(folder);
    }

    void atStart(@Observes StartupEvent start) {
        int swept = sweep(Clock.systemUTC().instant());
        if (swept > 0) {
            LOG.infof("Took away %d files that had not come in whole.", swept);
        }
    }

    /** Answers how many files were taken away. */
    int sweep(Instant now) {
        if (!Files.isDirectory(folder)) {
            return 0;
        }
        int swept = 0;
        try (var files = Files.list(folder)) {
            for (var file : (Iterable<Path>) files::iterator) {
                if (isLeft(file, now) && Files.deleteIfExists(file)) {
                    swept++;
                }
            }
        } catch (IOException e) {
            // leftovers harm nobody; the school opens all the same
            LOG.warn("The folder of files coming in could not be swept.", e);
        }
        return swept;
    }

    private static boolean isLeft(Path file, Instant now) throws IOException {
        try {
            return Files.isRegularFile(file)
                    && Files.getLastModifiedTime(file).toInstant().isBefore(now.minus(SETTLED));
        } catch (NoSuchFileException gone) {
            return false;
        }
    }
}
