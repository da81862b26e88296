package org.ripewood.platform;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.ext.web.RoutingContext;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

import org.eclipse.microprofile.config.inject.ConfigProperty;

import java.util.regex.Pattern;

/**
 * Turns a body away by the length it announces, with words; the framework would do so in silence,
 * and still does for a file that announces none.
 */
@ApplicationScoped
class BodyLimit {

    /** Before the framework's own check, after the safety headers. */
    private static final int EARLY = 9_000;

    private final ProblemAnswers answers;
    private final long mostBytes;
    private final long mostBytesOfFiles;
    private final Pattern filePaths;
    private final long mostBytesOfPhotos;
    private final Pattern photoPaths;
    private final long mostBytesOfRecords;
    private final Pattern recordPaths;

    BodyLimit(
            ProblemAnswers answers,
            @ConfigProperty(name = "ripewood.body.most") MemorySize most,
            @ConfigProperty(name = "ripewood.body.most-of-files") MemorySize mostOfFiles,
            @ConfigProperty(name = "ripewood.body.file-paths") String filePaths,
            @ConfigProperty(name = "ripewood.body.most-of-photos") MemorySize mostOfPhotos,
            @ConfigProperty(name = "ripewood.body.photo-paths") String photoPaths,
            @ConfigProperty(name = "ripewood.body.most-of-records") MemorySize mostOfRecords,
            @ConfigProperty(name = "ripewood.body.record-paths") String recordPaths) {
        this.answers = answers;
        this.mostBytes = most.asLongValue();
        this.mostBytesOfFiles = mostOfFiles.asLongValue();
        this.filePaths = Pattern.compile(filePaths);
        this.mostBytesOfPhotos = mostOfPhotos.asLongValue();
        this.photoPaths = Pattern.compile(photoPaths);
        this.mostBytesOfRecords = mostOfRecords.asLongValue();
        this.recordPaths = Pattern.compile(recordPaths);
    }

    void register(@Observes Filters filters) {
        filters.register(this::filter, EARLY);
    }

    private void filter(RoutingContext context) {
        var path = AskedAddress.of(context);
        boolean record = recordPaths.matcher(path).matches();
        long most = record ? mostBytesOfRecords : most(path);
        // files go to disk as they come, and their rooms count them again
        boolean file = record || photoPaths.matcher(path).matches();
        if (!file && announcesNothing(context)) {
            answers.refuse(context, Problems.plain(411, "Maybe send the header Content-Length."));
            return;
        }
        if (announced(context) <= most) {
            context.next();
            return;
        }
        var problem =
                Problems.plain(413, "Maybe send less at a time: at most %d bytes.".formatted(most));
        answers.refuse(context, problem);
    }

    private long most(String path) {
        if (photoPaths.matcher(path).matches()) {
            return mostBytesOfPhotos;
        }
        return filePaths.matcher(path).matches() ? mostBytesOfFiles : mostBytes;
    }

    /**
     * A body in chunks could grow to the framework's own limit, which is that of a whole school.
     */
    private static boolean announcesNothing(RoutingContext context) {
        return context.request().getHeader("Transfer-Encoding") != null;
    }

    private static long announced(RoutingContext context) {
        var length = context.request().getHeader("Content-Length");
        return length != null && length.matches("\\d{1,18}") ? Long.parseLong(length) : 0;
    }
}
