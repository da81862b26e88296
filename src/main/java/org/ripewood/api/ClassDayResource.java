package org.ripewood.api;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
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
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.ClassDays;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Today;

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
    private final Today today;

    ClassDayResource(ClassDays days, CurrentUser user, Today today) {
        this.days = days;
        this.user = user;
        this.today = today;
    }

    @GET
    @Path("sessions/{id}/plan")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "The plan of the day: who, which tree, which step, with what")
    public PlanAnswer plan(@PathParam("id") long id) {
        return PlanAnswer.of(days.plan(user.actor(), id));
    }

    @GET
    @Path("courses/{id}/weeks")
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
                        Asked.day("from", from, today.date()),
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
