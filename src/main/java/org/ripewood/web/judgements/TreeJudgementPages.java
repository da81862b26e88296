package org.ripewood.web.judgements;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Judged;
import org.ripewood.platform.Role;

/** Judgements of a tree, and the form for one. */
@Path("/trees/{id: \\d{1,18}}/judgements")
@Authenticated
class TreeJudgementPages {

    private final JudgementForms forms;

    TreeJudgementPages(JudgementForms forms) {
        this.forms = forms;
    }

    @GET
    public Response judgements(long id, @QueryParam("page") @DefaultValue("0") int page) {
        return forms.judgements(Judged.tree(id), page);
    }

    @GET
    @Path(JudgementForms.RUBRIC)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response form(long id, String rubric, @QueryParam("corrects") @Nullable Long corrects) {
        return forms.form(Judged.tree(id), rubric, corrects);
    }

    @POST
    @Path(JudgementForms.RUBRIC)
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response judge(long id, String rubric, MultivaluedMap<String, String> form) {
        return forms.judge(Judged.tree(id), rubric, form);
    }
}
