package org.ripewood.api.courses;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Today;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.NewCancellation;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.NewEnrolments;
import org.ripewood.sessions.NewMove;
import org.ripewood.sessions.NewRoll;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.NewSessions;
import org.ripewood.sessions.Roll;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.SessionPlanning;
import org.ripewood.sessions.Sessions;

/** Class dates and who comes with which tree. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Sessions")
class SessionResource {

    private final Sessions sessions;
    private final SessionPlanning planning;
    private final Rolls rolls;
    private final CurrentUser user;
    private final Inputs inputs;
    private final Today today;

    SessionResource(
            Sessions sessions,
            SessionPlanning planning,
            Rolls rolls,
            CurrentUser user,
            Inputs inputs,
            Today today) {
        this.sessions = sessions;
        this.planning = planning;
        this.rolls = rolls;
        this.user = user;
        this.inputs = inputs;
        this.today = today;
    }

    @GET
    @Path("courses/{id}/sessions")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Sessions of a course from a day on, soonest first, at most 100")
    public List<Session> ofCourse(
            @PathParam("id") long courseId, @QueryParam("from") @Nullable String from) {
        return sessions.ofCourse(user.actor(), courseId, Asked.day("from", from, today.date()));
    }

    @POST
    @Idempotent
    @Path("sessions")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Set a class date")
    @APIResponseSchema(value = Session.class, responseCode = "201", responseDescription = "Set")
    public RestResponse<Session> set(@Nullable NewSession session) {
        var set = sessions.set(user.actor(), inputs.check(session));
        return Answers.created("sessions/" + set.id(), set.version(), set);
    }

    @POST
    @Idempotent
    @Path("courses/{id}/sessions")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Set several class dates of a course, all or none, soonest first",
            description =
                    "The trees of the session named by \"like\" come as well, at the same benches.")
    @APIResponseSchema(value = Session[].class, responseCode = "201", responseDescription = "Set")
    public RestResponse<List<Session>> setAll(
            @PathParam("id") long courseId, @Nullable NewSessions wanted) {
        var set = planning.setAll(user.actor(), courseId, inputs.check(wanted));
        return Answers.created("courses/" + courseId + "/sessions", set);
    }

    @POST
    @Path("sessions/{id}/move")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Move a class date that has not begun; who comes stays enrolled",
            description = "What it was before is told as \"moved\".")
    public RestResponse<Session> move(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewMove move) {
        var version = Versions.required(ifMatch);
        var moved = planning.move(user.actor(), id, version, inputs.check(move));
        return Answers.versioned(moved.version(), moved);
    }

    @POST
    @Idempotent
    @Path("sessions/{id}/enrolments/many")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Enrol trees with their keepers, or every tree of the course",
            description =
                    "Benches are numbered by themselves. Trees that come or wait already are passed"
                            + " over; those for whom there is no place wait.")
    public RestResponse<Session> enrolMany(
            @PathParam("id") long id, @Nullable NewEnrolments wanted) {
        var session = sessions.enrolMany(user.actor(), id, inputs.check(wanted));
        return Answers.versioned(session.version(), session);
    }

    @DELETE
    @Path("sessions/{id}/waiting/{wait}")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "End a wait for a place")
    public RestResponse<Session> endWait(@PathParam("id") long id, @PathParam("wait") long waitId) {
        var session = sessions.endWait(user.actor(), id, waitId);
        return Answers.versioned(session.version(), session);
    }

    @GET
    @Path("sessions/{id}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "A session, with its version as ETag")
    public RestResponse<Session> get(@PathParam("id") long id) {
        var session = sessions.get(user.actor(), id);
        return Answers.versioned(session.version(), session);
    }

    @GET
    @Path("sessions/{id}/attendance")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Who came, with the session's version as ETag")
    public RestResponse<Roll> roll(@PathParam("id") long id) {
        var roll = rolls.of(user.actor(), id);
        return Answers.versioned(roll.version(), roll);
    }

    @PUT
    @Path("sessions/{id}/attendance")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Say who came, from the day of the class on",
            description = "Marks of students who are not named stay as they are.")
    public RestResponse<Roll> mark(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewRoll roll) {
        var version = Versions.required(ifMatch);
        var marked = rolls.mark(user.actor(), id, version, inputs.check(roll));
        return Answers.versioned(marked.version(), marked);
    }

    @POST
    @Idempotent
    @Path("sessions/{id}/enrolments")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Enrol a student with a tree")
    @APIResponseSchema(
            value = Session.class,
            responseCode = "201",
            responseDescription = "Enrolled")
    public RestResponse<Session> enrol(@PathParam("id") long id, @Nullable NewEnrolment enrolment) {
        var session = sessions.enrol(user.actor(), id, inputs.check(enrolment));
        return Answers.created("sessions/" + id, session.version(), session);
    }

    @DELETE
    @Path("sessions/{id}/enrolments/{enrolment}")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Take an enrolment back")
    public RestResponse<Session> withdraw(
            @PathParam("id") long id, @PathParam("enrolment") long enrolmentId) {
        var session = sessions.withdraw(user.actor(), id, enrolmentId);
        return Answers.versioned(session.version(), session);
    }

    @POST
    @Path("sessions/{id}/cancellation")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Cancel a class date, with a reason; it stays in the record",
            description =
                    "The same reason sent twice counts once; another one is answered with 409,"
                            + " since people have been told the first.")
    public RestResponse<Session> cancel(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewCancellation cancellation) {
        var version = Versions.required(ifMatch);
        var session = sessions.cancel(user.actor(), id, version, inputs.check(cancellation));
        return Answers.versioned(session.version(), session);
    }
}
