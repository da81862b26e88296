package org.ripewood.api.steps;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.standing.Decision;
import org.ripewood.standing.Decisions;
import org.ripewood.steps.NewReport;
import org.ripewood.steps.Reports;
import org.ripewood.steps.SignOffs;
import org.ripewood.steps.Step;
import org.ripewood.steps.Steps;

/** Steps from assignment to sign-off, and the decisions they stood on. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Steps")
class StepResource {

    private final Steps steps;
    private final Reports reports;
    private final SignOffs signOffs;
    private final Decisions decisions;
    private final CurrentUser user;
    private final Inputs inputs;

    StepResource(
            Steps steps,
            Reports reports,
            SignOffs signOffs,
            Decisions decisions,
            CurrentUser user,
            Inputs inputs) {
        this.steps = steps;
        this.reports = reports;
        this.signOffs = signOffs;
        this.decisions = decisions;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("steps/{id}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "A step with all that happened to it, with its version as ETag")
    public RestResponse<Step> get(@PathParam("id") long id) {
        return answer(steps.get(user.actor(), id));
    }

    @POST
    @Idempotent
    @Path("steps/{id}/report")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME})
    @Operation(summary = "Report a step done, with evidence")
    public RestResponse<Step> report(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewReport report) {
        var version = Versions.required(ifMatch);
        return answer(reports.report(user.actor(), id, version, inputs.check(report)));
    }

    @POST
    @Path("steps/{id}/sign-off")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Sign a reported step off; the tree's record changes with it")
    public RestResponse<Step> signOff(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable Remark remark) {
        var version = Versions.required(ifMatch);
        var note = inputs.check(remark).note();
        return answer(signOffs.signOff(user.actor(), id, version, note));
    }

    @POST
    @Path("steps/{id}/send-back")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Send a reported step back with a note")
    public RestResponse<Step> sendBack(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable Reasoned reasoned) {
        var version = Versions.required(ifMatch);
        var note = inputs.check(reasoned).note();
        return answer(signOffs.sendBack(user.actor(), id, version, note));
    }

    @POST
    @Path("steps/{id}/withdraw")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Take back a step that is not signed off yet")
    public RestResponse<Step> withdraw(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable Reasoned reasoned) {
        var version = Versions.required(ifMatch);
        var note = inputs.check(reasoned).note();
        return answer(signOffs.withdraw(user.actor(), id, version, note));
    }

    @GET
    @Path("decisions/{id}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "A verdict as it was when someone acted on it")
    public Decision decision(@PathParam("id") long id) {
        return decisions.get(user.actor(), id);
    }

    private static RestResponse<Step> answer(Step step) {
        return Answers.versioned(step.version(), step);
    }
}
