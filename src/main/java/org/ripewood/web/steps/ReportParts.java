package org.ripewood.web.steps;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photos;
import org.ripewood.photos.Viewpoint;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.Step;

/** A report that comes in parts: what is typed, and photos as evidence for the step. */
@ApplicationScoped
class ReportParts {

    static final int MOST = 6;

    private final Reports reports;
    private final Photos photos;

    ReportParts(Reports reports, Photos photos) {
        this.reports = reports;
        this.photos = photos;
    }

    /**
     * @param photos how many came with it
     */
    record Reported(Step step, int photos) {}

    /** What is typed, as a form without files has it. */
    static MultivaluedMap<String, String> fields(MultipartFormDataInput parts) {
        var form = new MultivaluedHashMap<String, String>();
        parts.getValues()
                .forEach(
                        (name, values) ->
                                values.stream()
                                        .filter(value -> !value.isFileItem())
                                        .forEach(value -> form.add(name, value.getValue())));
        return form;
    }

    /**
     * Reports a step and keeps the photos as its evidence, by the checks of every photo.
     *
     * @throws Refused as a report is refused, or 400 with the first photo that cannot be kept; then
     *     nothing is kept
     */
    @Transactional
    Reported report(
            Actor actor,
            long stepId,
            long version,
            NewReport report,
            @Nullable List<FileUpload> sent) {
        var step = reports.report(actor, stepId, version, report);
        return new Reported(step, keep(actor, step, sent));
    }

    private int keep(Actor actor, Step step, @Nullable List<FileUpload> sent) {
        var files =
                sent == null
                        ? List.<FileUpload>of()
                        : sent.stream().filter(ReportParts::chosen).toList();
        if (files.size() > MOST) {
            throw Refused.invalid(
                    "photo", "expected at most %d photos, found %d".formatted(MOST, files.size()));
        }
        var said = new NewPhoto(null, Viewpoint.DETAIL, null, null, step.id());
        for (var file : files) {
            try (var stream = Files.newInputStream(file.uploadedFile())) {
                photos.add(actor, step.treeId(), said, stream);
            } catch (IOException e) {
                throw new UncheckedIOException("what was sent cannot be read again", e);
            }
        }
        return files.size();
    }

    /** A browser sends an empty part without a name when nothing was chosen. */
    private static boolean chosen(FileUpload file) {
        return file.size() > 0 || !file.fileName().isEmpty();
    }
}
