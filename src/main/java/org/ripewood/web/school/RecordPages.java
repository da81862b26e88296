package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.archive.Archive;
import org.ripewood.archive.Backup;
import org.ripewood.archive.Backups;
import org.ripewood.archive.Taken;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.http.FileParts;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.Confirmations;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.FormState;

/** The registrar's page for the record as a file. */
@Path("/record")
@RolesAllowed(Role.REGISTRAR_NAME)
class RecordPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance record(
                FormState typed,
                long sealed,
                @Nullable Taken taken,
                @Nullable Backup backup,
                boolean confirmed);
    }

    private static final String FORM = "record";

    private final CurrentUser user;
    private final Archive archive;
    private final Backups backups;
    private final Confirmations confirmations;
    private final ConfirmForms confirming;

    RecordPages(
            CurrentUser user,
            Archive archive,
            Backups backups,
            Confirmations confirmations,
            ConfirmForms confirming) {
        this.confirmations = confirmations;
        this.confirming = confirming;
        this.user = user;
        this.archive = archive;
        this.backups = backups;
    }

    @GET
    public Response page() {
        return Answer.page(shown(FormState.fresh(FORM), null, null));
    }

    /** Before a file is chosen, since no page keeps one while it asks. */
    @POST
    @Path("confirmation")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response confirm(MultivaluedMap<String, String> form) {
        return confirming.first(form, () -> Answer.seeOther("/record#in"));
    }

    @POST
    @RateLimited
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response take(@RestForm("file") @Nullable FileUpload file) {
        try (var sent = open(file)) {
            FileParts.requireAtMostOne("file");
            confirmations.require();
            return Answer.page(
                    shown(FormState.fresh(FORM), archive.take(user.actor(), sent), null));
        } catch (Refused refused) {
            var problem = refused.problem();
            return Answer.page(
                    problem.status(), shown(new FormState(FORM, Map.of(), problem), null, null));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @POST
    @Path("backup")
    @RateLimited
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response backUp() {
        try {
            var backup = backups.make(user.actor());
            return Answer.page(shown(FormState.fresh(FORM), null, backup));
        } catch (Refused refused) {
            var problem = refused.problem();
            var typed = new FormState("backup", Map.of(), problem);
            return Answer.page(problem.status(), shown(typed, null, null));
        }
    }

    private TemplateInstance shown(
            FormState typed, @Nullable Taken taken, @Nullable Backup backup) {
        return Templates.record(
                typed, archive.sealed(user.actor()), taken, backup, confirmations.isConfirmed());
    }

    private static InputStream open(@Nullable FileUpload file) throws IOException {
        return file == null
                ? new ByteArrayInputStream(new byte[0])
                : Files.newInputStream(file.uploadedFile());
    }
}
