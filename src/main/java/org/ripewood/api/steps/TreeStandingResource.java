package org.ripewood.api.steps;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
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
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.routes.RouteMaker;
import org.ripewood.routes.RouteView;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignment;
import org.ripewood.standing.Standings;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.standing.TreeStanding;
import org.ripewood.steps.Step;
import org.ripewood.steps.Steps;
import org.ripewood.trees.TreeDays;

/** How a tree stands, what could be done with it, and its steps. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Standing")
class TreeStandingResource {

    private final Standings standings;
    private final ChecklistMaker checklistMaker;
    private final RouteMaker routeMaker;
    private final Steps steps;
    private final Assigner assigner;
    private final CurrentUser user;
    private final Inputs inputs;
    private final TreeDays treeDays;

    TreeStandingResource(
            Standings standings,
            ChecklistMaker checklistMaker,
            RouteMaker routeMaker,
            Steps steps,
            Assigner assigner,
            CurrentUser user,
            Inputs inputs,
            TreeDays treeDays) {
        this.standings = standings;
        this.checklistMaker = checklistMaker;
        this.routeMaker = routeMaker;
        this.steps = steps;
        this.assigner = assigner;
        this.user = user;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    @Path("trees/{id}/standing")
    @Operation(summary = "How every technique stands for the tree on a day, with all reasons")
    public TreeStanding standing(@PathParam("id") long id, @QueryParam("on") @Nullable String on) {
        return standings.of(user.actor(), id, Asked.day("on", on, treeDays.at(id)));
    }

    @GET
    @Path("trees/{id}/proposals")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "What could be assigned on a day, most useful first")
    public List<TechniqueStanding> proposals(
            @PathParam("id") long id, @QueryParam("on") @Nullable String on) {
        return standings.proposals(user.actor(), id, Asked.day("on", on, treeDays.at(id)));
    }

    @GET
    @Path("trees/{id}/checklist")
    @Operation(summary = "What its keeper does now, waits for and measures next")
    public ChecklistAnswer checklist(
            @PathParam("id") long id, @QueryParam("on") @Nullable String on) {
        return ChecklistAnswer.of(
                checklistMaker.make(user.actor(), id, Asked.day("on", on, treeDays.at(id))));
    }

    @GET
    @Path("trees/{id}/route")
    @Operation(
            summary = "When each step to a goal stage is likely to be done, and what decides it",
            description =
                    "The years ahead are gone through many times, with everything that can be"
                            + " forecast drawn anew each time, and with years and people that differ;"
                            + " earliest, likely and latest are the days by which a step is done in"
                            + " 10, 50 and 90 % of them, and seasons names what is really known of"
                            + " such a day. Where assumed is true it hangs on something taken for"
                            + " granted: it is not before earliest, and nothing is promised. goal is"
                            + " a stage's code; without it the stage after the tree's own is"
                            + " taken.")
    public RouteView route(
            @PathParam("id") long id,
            @QueryParam("goal") @Nullable String goal,
            @QueryParam("on") @Nullable String on) {
        return routeMaker.make(user.actor(), id, goal, Asked.day("on", on, treeDays.at(id)));
    }

    @GET
    @Path("trees/{id}/steps")
    @Operation(summary = "Steps assigned for the tree, latest first")
    public Paged<Step> steps(
            @PathParam("id") long id,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return steps.of(user.actor(), id, Asked.page(page, size));
    }

    @POST
    @Idempotent
    @Path("trees/{id}/steps")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Assign a step; every reason against it must be waived with a reason")
    @APIResponseSchema(value = Step.class, responseCode = "201", responseDescription = "Assigned")
    public RestResponse<Step> assign(@PathParam("id") long id, @Nullable NewAssignment assignment) {
        var step = assigner.assign(user.actor(), id, inputs.check(assignment));
        return Answers.created("steps/" + step.id(), step.version(), step);
    }

    @POST
    @Idempotent
    @Path("trees/{id}/found-done")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(summary = "Note that a technique was found already done")
    @APIResponseSchema(value = Step.class, responseCode = "201", responseDescription = "Noted")
    public RestResponse<Step> foundDone(@PathParam("id") long id, @Nullable NewFoundDone found) {
        var noted = inputs.check(found);
        var step =
                assigner.noteFoundDone(
                        user.actor(), id, noted.technique(), noted.doneOn(), noted.note());
        return Answers.created("steps/" + step.id(), step.version(), step);
    }
}
