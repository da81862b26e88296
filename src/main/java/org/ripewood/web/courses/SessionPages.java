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
import org.ripewood.platform.problems.Refused;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.NewEnrolments;
import org.ripewood.sessions.NewMove;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.SessionPlanning;
import org.ripewood.sessions.Sessions;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;
import org.ripewood.web.kit.TextFormat;
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
    private final SessionPlanning planning;
    private final Rolls rolls;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final Said said;

    SessionPages(
            CurrentUser user,
            SessionPageAssembler desk,
            Sessions sessions,
            SessionPlanning planning,
            Rolls rolls,
            Inputs inputs,
            OnceForms onceForms,
            Said said) {
        this.user = user;
        this.desk = desk;
        this.sessions = sessions;
        this.planning = planning;
        this.rolls = rolls;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.said = said;
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

    /** Enrols the trees that are ticked; benches are numbered by themselves. */
    @POST
    @Path("enrolments/many")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response enrolMany(long id, MultivaluedMap<String, String> form) {
        return onceForms.to(
                form,
                () -> {
                    var wanted = inputs.read(form, NewEnrolments.class);
                    if (wanted.treeIds() == null) {
                        throw Refused.invalid("treeIds", "Choose at least one tree.");
                    }
                    var session = sessions.enrolMany(user.actor(), id, wanted);
                    said.that(desk.coming(session));
                    return "/sessions/" + id + "#coming";
                },
                problem -> page(id, FormState.refused("many", form, problem)));
    }

    @POST
    @Path("move")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response move(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    var to = inputs.read(form, NewMove.class);
                    var moved = planning.move(user.actor(), id, version, to);
                    said.that(
                            "The session is held on %s, %s to %s, %s. %s"
                                    .formatted(
                                            TextFormat.day(moved.heldOn()),
                                            moved.startsAt(),
                                            moved.endsAt(),
                                            moved.place(),
                                            desk.coming(moved)));
                    return "/sessions/" + id;
                },
                problem -> page(id, FormState.refused("move", form, problem)));
    }

    @POST
    @Path("waiting/{waitId: \\d{1,18}}/withdraw")
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response endWait(long id, long waitId) {
        sessions.endWait(user.actor(), id, waitId);
        return Answer.seeOther("/sessions/" + id + "#coming");
    }

    @POST
    @Path("attendance")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response mark(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var marks = inputs.read(form, RollForm.class);
                    var roll = rolls.of(user.actor(), id);
                    var marked = rolls.mark(user.actor(), id, marks.version(), marks.roll(roll));
                    said.that(RollFormat.counted(marked));
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
                    said.that("The session is cancelled. Those who were to come read why.");
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
