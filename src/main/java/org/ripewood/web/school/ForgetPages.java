package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.AssertTrue;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.archive.Archive;
import org.ripewood.archive.Forgetting;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.FormState;

/** Asks before a person is forgotten. */
@Path("/people/{id: \\d{1,18}}/forget")
@RolesAllowed(Role.REGISTRAR_NAME)
class ForgetPages {

    /** Said twice, because it cannot be taken back. */
    record Said(
            @NotNull Long version,
            @AssertTrue(message = "your word that this person is meant") boolean meant) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance forget(Forgetting told, FormState typed);
    }

    private static final String FORM = "forget";

    private final CurrentUser user;
    private final Archive archive;
    private final Inputs inputs;
    private final ConfirmForms confirming;

    ForgetPages(CurrentUser user, Archive archive, Inputs inputs, ConfirmForms confirming) {
        this.confirming = confirming;
        this.user = user;
        this.archive = archive;
        this.inputs = inputs;
    }

    @GET
    public Response ask(long id) {
        return Answer.page(page(id, FormState.fresh(FORM)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response forget(long id, MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.to(
                                () -> {
                                    var said = inputs.read(form, Said.class);
                                    archive.forget(user.actor(), id, said.version());
                                    return "/people#everybody";
                                },
                                problem -> page(id, FormState.refused(FORM, form, problem))));
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.forget(archive.forgetting(user.actor(), id), typed);
    }
}
