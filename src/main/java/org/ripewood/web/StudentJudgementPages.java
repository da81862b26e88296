package org.ripewood.web;

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

/** Judgements of a student's skill, and the form for one. */
@Path("/students/{id: \\d{1,18}}/judgements")
@Authenticated
class StudentJudgementPages {

    private static final String RUBRIC = "{rubric: [a-z-]{1,60}}";

    private final JudgementDesk desk;
    private final OnceForms onceForms;

    StudentJudgementPages(JudgementDesk desk, OnceForms onceForms) {
        this.desk = desk;
        this.onceForms = onceForms;
    }

    @GET
    public Response judgements(long id, @QueryParam("page") @DefaultValue("0") int page) {
        var sheet = desk.lay(Judged.student(id), page, Typed.fresh("none"));
        return Answer.page(JudgementPages.Templates.judgements(sheet));
    }

    @GET
    @Path(RUBRIC)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response form(long id, String rubric, @QueryParam("corrects") @Nullable Long corrects) {
        var sheet = desk.form(Judged.student(id), rubric, corrects);
        return Answer.page(JudgementPages.Templates.judge(sheet));
    }

    @POST
    @Path(RUBRIC)
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response judge(long id, String rubric, MultivaluedMap<String, String> form) {
        var of = Judged.student(id);
        return onceForms.to(
                form,
                () -> desk.take(of, rubric, form),
                problem -> {
                    var typed = Typed.refused(JudgementDesk.FORM, form, problem);
                    return JudgementPages.Templates.judge(desk.form(of, rubric, typed));
                });
    }
}
