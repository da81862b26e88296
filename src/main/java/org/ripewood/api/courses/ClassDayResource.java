package org.ripewood.api.courses;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Duration;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.classday.ClassDays;
import org.ripewood.classday.DayTimetable;
import org.ripewood.classday.NewDayWish;
import org.ripewood.classday.NewTimetable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.trees.TreeDays;

/** The plan of a class day, and which lesson fits when. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Class days")
class ClassDayResource {

    /** A caller that waits longer than this asks again. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private static final int WEEKS_UNLESS_ASKED = 26;

    /** How far a count is that goes on. */
    record Counting(int counted, int trees) {}

    private final ClassDays days;
    private final CurrentUser user;
    private final Inputs inputs;
    private final TreeDays treeDays;

    ClassDayResource(ClassDays days, CurrentUser user, Inputs inputs, TreeDays treeDays) {
        this.days = days;
        this.user = user;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    @Path("sessions/{id}/plan")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "The plan of the day: who, which tree, which step, with what")
    public PlanAnswer plan(@PathParam("id") long id) {
        return PlanAnswer.of(days.plan(user.actor(), id));
    }

    @POST
    @Path("sessions/{id}/wishes")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Pin work for a tree, drop it, or say nothing of it any more",
            description = "A pin outranks what would be chosen; what is dropped is not chosen.")
    @APIResponseSchema(value = PlanAnswer.class, responseCode = "200")
    public PlanAnswer wish(@PathParam("id") long id, @Nullable NewDayWish wish) {
        days.wish(user.actor(), id, inputs.check(wish));
        return plan(id);
    }

    @POST
    @Path("sessions/{id}/timetables")
    @RateLimited
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Lay out the day, anew or from a time on",
            description =
                    "With a time, what has begun by then is kept, and who was said to be late or"
                            + " absent stays so. Every plan is kept; the latest is in force.")
    @APIResponseSchema(
            value = DayTimetable.class,
            responseCode = "201",
            responseDescription = "Laid out")
    public RestResponse<DayTimetable> layOut(
            @PathParam("id") long id, @Nullable NewTimetable asked) {
        var laidOut = days.layOut(user.actor(), id, inputs.check(asked));
        return Answers.created("sessions/" + id + "/plan", laidOut.revision(), laidOut);
    }

    @GET
    @Path("courses/{id}/weeks")
    @RateLimited
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "How many trees could do each technique in each week from a day on")
    @APIResponse(
            responseCode = "200",
            description = "Counted",
            content = @Content(schema = @Schema(implementation = WeeksAnswer.class)))
    @APIResponse(
            responseCode = "202",
            description = "Counting goes on; ask again with the same words",
            content = @Content(schema = @Schema(implementation = Counting.class)))
    public RestResponse<Object> weeks(
            @PathParam("id") long id,
            @QueryParam("from") @Nullable String from,
            @QueryParam("weeks") @Nullable String weeks) {
        var progress =
                days.weeksAhead(
                        user.actor(),
                        id,
                        Asked.day("from", from, treeDays.ofCourse(id)),
                        Asked.whole("weeks", weeks, WEEKS_UNLESS_ASKED),
                        PATIENCE);
        var through = progress.through();
        return through == null
                ? RestResponse.status(
                        RestResponse.Status.ACCEPTED,
                        new Counting(progress.counted(), progress.trees()))
                : RestResponse.ok(WeeksAnswer.of(through));
    }
}
