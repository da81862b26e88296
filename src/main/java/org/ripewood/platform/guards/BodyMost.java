package org.ripewood.platform.guards;

import io.quarkus.runtime.configuration.MemorySize;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Problems;

/** How many bytes a body may have, by the address it is sent to. */
@ApplicationScoped
class BodyMost {

    private final long bytes;
    private final long bytesOfFiles;
    private final Pattern filePaths;
    private final long bytesOfPhotos;
    private final Pattern photoPaths;
    private final long bytesOfRecords;
    private final Pattern recordPaths;

    BodyMost(
            @ConfigProperty(name = "ripewood.body.most") MemorySize most,
            @ConfigProperty(name = "ripewood.body.most-of-files") MemorySize mostOfFiles,
            @ConfigProperty(name = "ripewood.body.file-paths") String filePaths,
            @ConfigProperty(name = "ripewood.body.most-of-photos") MemorySize mostOfPhotos,
            @ConfigProperty(name = "ripewood.body.photo-paths") String photoPaths,
            @ConfigProperty(name = "ripewood.body.most-of-records") MemorySize mostOfRecords,
            @ConfigProperty(name = "ripewood.body.record-paths") String recordPaths) {
        this.bytes = most.asLongValue();
        this.bytesOfFiles = mostOfFiles.asLongValue();
        this.filePaths = Pattern.compile(filePaths);
        this.bytesOfPhotos = mostOfPhotos.asLongValue();
        this.photoPaths = Pattern.compile(photoPaths);
        this.bytesOfRecords = mostOfRecords.asLongValue();
        this.recordPaths = Pattern.compile(recordPaths);
    }

    long at(String path) {
        if (recordPaths.matcher(path).matches()) {
            return bytesOfRecords;
        }
        if (photoPaths.matcher(path).matches()) {
            return bytesOfPhotos;
        }
        return filePaths.matcher(path).matches() ? bytesOfFiles : bytes;
    }

    /** Whether what comes goes to disk or through a reader, and never whole into memory. */
    boolean mayComeUnannounced(String path) {
        return recordPaths.matcher(path).matches() || photoPaths.matcher(path).matches();
    }

    /** Whether a body there may be a file, and take its time. */
    boolean isOfFiles(String path) {
        return mayComeUnannounced(path) || filePaths.matcher(path).matches();
    }

    static Problem tooLarge(long most) {
        return Problems.plain(413, "Maybe send less at a time: at most %d bytes.".formatted(most));
    }
}
