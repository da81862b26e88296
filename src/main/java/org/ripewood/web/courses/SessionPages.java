package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Sessions;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Versioned;

/** A class date: who comes, with which tree, at which bench. */
@Path("/sessions/{id: \\d{1,18}}")
@Authenticated
class SessionPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance session(SessionPageModel sheet);
    }

    private final CurrentUser user;
    private final SessionPageAssembler desk;
    private final Sessions sessions;
    private final Rolls rolls;
    private final Inputs inputs;
    private final OnceForms onceForms;

    SessionPages(
            CurrentUser user,
            SessionPageAssembler desk,
            Sessions sessions,
            Rolls rolls,
            Inputs inputs,
            OnceForms onceForms) {
        this.user = user;
        this.desk = desk;
        this.sessions = sessions;
        this.rolls = rolls;
        this.inputs = inputs;
        this.onceForms = onceForms;
    }

    @GET
    public Response session(long id) {
        return Answer.page(page(id, FormState.fresh("enrolment")));
    }

    @POST
    @Path("enrolments")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response enrol(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var coming = inputs.read(form, TreeAtBench.class);
                    sessions.enrol(user.actor(), id, desk.enrolment(user.actor(), coming));
                    return "/sessions/" + id + "#coming";
                },
                problem -> page(id, FormState.refused("enrolment", form, problem)));
    }

    @POST
    @Path("attendance")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response mark(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var said = inputs.read(form, RollForm.class);
                    rolls.mark(user.actor(), id, said.version(), said.roll());
                    return "/sessions/" + id + "#came";
                },
                problem -> page(id, FormState.refused("roll", form, problem)));
    }

    @POST
    @Path("cancellation")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response cancel(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    var why = inputs.read(form, NewCancellation.class);
                    sessions.cancel(user.actor(), id, version, why);
                    return "/sessions/" + id;
                },
                problem -> page(id, FormState.refused("cancellation", form, problem)));
    }

    @POST
    @Path("enrolments/{enrolmentId: \\d{1,18}}/withdraw")
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response withdraw(long id, long enrolmentId) {
        sessions.withdraw(user.actor(), id, enrolmentId);
        return Answer.seeOther("/sessions/" + id + "#coming");
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.session(desk.lay(user.actor(), id, typed));
    }
}
