package org.ripewood.api.trees;

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
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.records.Branch;
import org.ripewood.records.Branches;
import org.ripewood.records.ContainerStay;
import org.ripewood.records.Containers;
import org.ripewood.records.MeasurementSeries;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.NewSeries;
import org.ripewood.records.NewWound;
import org.ripewood.records.Observations;
import org.ripewood.records.SeriesOutcome;
import org.ripewood.records.Wounds;
import org.ripewood.standing.EarlierWorks;
import org.ripewood.standing.NewEarlierWork;

/** What is written down about a tree; nothing in it is overwritten. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Trees")
class TreeRecordResource {

    private final Observations observing;
    private final MeasurementSeries measurementSeries;
    private final Wounds wounds;
    private final Branches branches;
    private final Containers containers;
    private final EarlierWorks earlierWorks;
    private final CurrentUser user;
    private final Inputs inputs;

    TreeRecordResource(
            Observations observing,
            MeasurementSeries measurementSeries,
            Wounds wounds,
            Branches branches,
            Containers containers,
            EarlierWorks earlierWorks,
            CurrentUser user,
            Inputs inputs) {
        this.observing = observing;
        this.measurementSeries = measurementSeries;
        this.wounds = wounds;
        this.branches = branches;
        this.containers = containers;
        this.earlierWorks = earlierWorks;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("trees/{id}/observations")
    @Operation(summary = "Observations, latest first, corrected ones included and marked")
    public Paged<ObservationAnswer> observations(
            @PathParam("id") long id,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return ObservationAnswer.of(observing.list(user.actor(), id, Asked.page(page, size)));
    }

    @POST
    @Idempotent
    @Path("trees/{id}/observations")
    @Operation(
            summary = "Record something seen or measured, or correct an earlier entry",
            description =
                    "What looks odd, and a day before the tree came, is asked about: the answer lists"
                            + " questions, and the same entry with their keys in confirmed is kept.")
    @APIResponseSchema(
            value = ObservationAnswer.class,
            responseCode = "201",
            responseDescription = "Recorded")
    @APIResponse(
            responseCode = "409",
            description = "The value or the day looks odd; nothing was recorded",
            content =
                    @Content(
                            mediaType = OddValues.MEDIA_TYPE,
                            schema = @Schema(implementation = OddValues.class)))
    @Produces({MediaType.APPLICATION_JSON, OddValues.MEDIA_TYPE})
    public RestResponse<Object> observe(
            @PathParam("id") long id, @Nullable NewObservation observation) {
        var path = "trees/%d/observations".formatted(id);
        var outcome = measurementSeries.observe(user.actor(), id, inputs.check(observation));
        if (outcome instanceof SeriesOutcome.Asked asked) {
            return OddValues.answer(Answers.ROOT + path, asked.questions());
        }
        Object stored =
                ObservationAnswer.of(((SeriesOutcome.Stored) outcome).observations().get(0));
        return Answers.created(path, stored);
    }

    @POST
    @Idempotent
    @Path("trees/{id}/series")
    @Operation(
            summary = "Record all that was measured in one go, or nothing of it",
            description =
                    "Values that look odd are asked about: the answer lists questions, and the same"
                            + " series with their keys in confirmed is kept.")
    @APIResponseSchema(
            value = ObservationAnswer[].class,
            responseCode = "201",
            responseDescription = "Recorded")
    @APIResponse(
            responseCode = "409",
            description = "Some values look odd; nothing was recorded",
            content =
                    @Content(
                            mediaType = OddValues.MEDIA_TYPE,
                            schema = @Schema(implementation = OddValues.class)))
    @Produces({MediaType.APPLICATION_JSON, OddValues.MEDIA_TYPE})
    public RestResponse<Object> recordSeries(@PathParam("id") long id, @Nullable NewSeries series) {
        var path = "trees/%d/series".formatted(id);
        var outcome = measurementSeries.record(user.actor(), id, inputs.check(series));
        if (outcome instanceof SeriesOutcome.Asked asked) {
            return OddValues.answer(Answers.ROOT + path, asked.questions());
        }
        Object stored =
                ((SeriesOutcome.Stored) outcome)
                        .observations().stream().map(ObservationAnswer::of).toList();
        return Answers.created("trees/%d/observations".formatted(id), stored);
    }

    @GET
    @Path("trees/{id}/wounds")
    @Operation(summary = "Wounds with their readings, oldest first")
    public List<WoundAnswer> wounds(@PathParam("id") long id) {
        return wounds.of(user.actor(), id).stream().map(WoundAnswer::of).toList();
    }

    @POST
    @Idempotent
    @Path("trees/{id}/wounds")
    @Operation(summary = "Enter a wound")
    @APIResponseSchema(
            value = WoundAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<WoundAnswer> addWound(@PathParam("id") long id, @Nullable NewWound wound) {
        var entered = wounds.add(user.actor(), id, inputs.check(wound));
        return Answers.created("trees/" + id + "/wounds", WoundAnswer.of(entered));
    }

    @GET
    @Path("trees/{id}/branches")
    @Operation(summary = "Branches that matter to the design, with their latest readings")
    public List<Branch> branches(@PathParam("id") long id) {
        return branches.of(user.actor(), id);
    }

    @POST
    @Idempotent
    @Path("trees/{id}/branches")
    @Operation(summary = "Enter a branch")
    @APIResponseSchema(value = Branch.class, responseCode = "201", responseDescription = "Entered")
    public RestResponse<Branch> addBranch(@PathParam("id") long id, @Nullable NewBranch branch) {
        var entered = branches.add(user.actor(), id, inputs.check(branch));
        return Answers.created("trees/" + id + "/branches", entered);
    }

    @GET
    @Path("trees/{id}/containers")
    @Operation(summary = "What the tree has stood in, latest first")
    public List<ContainerStay> containers(@PathParam("id") long id) {
        return containers.of(user.actor(), id);
    }

    @POST
    @Idempotent
    @Path("trees/{id}/containers")
    @Operation(summary = "Move the tree to another container or into the ground")
    @APIResponseSchema(
            value = ContainerStay.class,
            responseCode = "201",
            responseDescription = "Moved")
    public RestResponse<ContainerStay> moveTo(
            @PathParam("id") long id, @Nullable NewContainer container) {
        var stay = containers.moveTo(user.actor(), id, inputs.check(container));
        return Answers.created("trees/" + id + "/containers", stay);
    }

    @GET
    @Path("trees/{id}/works")
    @Operation(summary = "Work done on the tree, latest first")
    public List<WorkAnswer> works(@PathParam("id") long id) {
        return earlierWorks.of(user.actor(), id).stream().map(WorkAnswer::of).toList();
    }

    @POST
    @Idempotent
    @Path("trees/{id}/works")
    @Operation(
            summary = "Enter work that was done without a step, such as before the tree came",
            description =
                    "It loads the tree and starts its clocks as signed-off work does. A share left out"
                            + " counts as what the technique usually takes. Only an instructor may say"
                            + " that the technique counts as done from then on.")
    @APIResponseSchema(
            value = WorkAnswer.class,
            responseCode = "201",
            responseDescription = "Entered")
    public RestResponse<WorkAnswer> enterWork(
            @PathParam("id") long id, @Nullable NewEarlierWork work) {
        var entered = earlierWorks.enter(user.actor(), id, inputs.check(work));
        return Answers.created("trees/" + id + "/works", WorkAnswer.of(entered));
    }
}
