package org.ripewood.web.photos;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.photos.NewPhoto;
import org.ripewood.photos.Photos;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Several photos sent at once: the good ones are kept, the others told by their place in line. */
@ApplicationScoped
class PhotosSent {

    private static final String FIELD = "photo";

    private final Photos photos;

    PhotosSent(Photos photos) {
        this.photos = photos;
    }

    /**
     * @throws Refused 400 with the faults of all that were not kept, or at once for what is wrong
     *     with what is said of them
     */
    void keep(Actor actor, long treeId, NewPhoto said, List<FileUpload> uploads) {
        var files = uploads.stream().filter(PhotosSent::chosen).toList();
        if (files.isEmpty()) {
            throw Refused.invalid(FIELD, "expected a file, found none");
        }
        var faults = new ArrayList<Fault>();
        String maybe = null;
        for (int i = 0; i < files.size(); i++) {
            var problem = problemOf(actor, treeId, said, files.get(i));
            if (problem != null) {
                maybe = problem.maybe();
                for (var fault : problem.faults()) {
                    faults.add(told(fault, i + 1, files.size()));
                }
            }
        }
        if (!faults.isEmpty()) {
            throw new Refused(
                    new Problem(
                            400,
                            "invalid",
                            "This cannot be kept as a photo",
                            "%d of %d photo(s) were kept."
                                    .formatted(files.size() - faults.size(), files.size()),
                            maybe,
                            faults));
        }
    }

    /** A browser sends an empty part without a name when nothing was chosen. */
    private static boolean chosen(FileUpload file) {
        return file.size() > 0 || !file.fileName().isEmpty();
    }

    private @Nullable Problem problemOf(Actor actor, long treeId, NewPhoto said, FileUpload file) {
        try (var stream = Files.newInputStream(file.uploadedFile())) {
            photos.add(actor, treeId, said, stream);
            return null;
        } catch (Refused refused) {
            var problem = refused.problem();
            if (problem.faults().stream().noneMatch(fault -> fault.field().equals(FIELD))) {
                throw refused;
            }
            return problem;
        } catch (IOException e) {
            throw new UncheckedIOException("what was sent cannot be read again", e);
        }
    }

    private static Fault told(Fault fault, int number, int of) {
        return of == 1
                ? fault
                : new Fault(
                        fault.field(),
                        "number %d of %d: %s".formatted(number, of, fault.message()));
    }
}
