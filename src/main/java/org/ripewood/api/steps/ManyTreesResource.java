package org.ripewood.api.steps;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.many.ManyObservations;
import org.ripewood.many.NewFactOfMany;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Observation;
import org.ripewood.standing.Assigner;
import org.ripewood.standing.NewAssignments;
import org.ripewood.steps.ManySignOffs;
import org.ripewood.steps.NewSignOffs;
import org.ripewood.steps.Step;

/** What is done to many trees of a course at once: all of it or none. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Many trees")
class ManyTreesResource {

    private static final int ASKED = 409;

    private final Assigner assigner;
    private final ManyObservations observations;
    private final ManySignOffs signOffs;
    private final CurrentUser user;
    private final Inputs inputs;

    ManyTreesResource(
            Assigner assigner,
            ManyObservations observations,
            ManySignOffs signOffs,
            CurrentUser user,
            Inputs inputs) {
        this.assigner = assigner;
        this.observations = observations;
        this.signOffs = signOffs;
        this.user = user;
        this.inputs = inputs;
    }

    /** An entry, by its tree. */
    @Schema(name = "RecordedOfTree")
    record Recorded(long treeId, long id) {}

    @POST
    @Idempotent
    @Path("courses/{id}/steps")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(
            summary = "Assign one step to many trees, all or none",
            description =
                    "A refusal names every tree that cannot be given the step, at its place in"
                            + " \"trees\", with the reason.")
    public RestResponse<List<Step>> assign(
            @PathParam("id") long courseId, @Nullable NewAssignments wanted) {
        return RestResponse.ok(assigner.assignAll(user.actor(), courseId, inputs.check(wanted)));
    }

    @POST
    @Idempotent
    @Path("courses/{id}/observations")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Record one fact seen alike on many trees, for all or none",
            description =
                    "A value that looks odd for a tree is answered with 409 and a key; the key is"
                            + " sent as \"confirmed\" of that tree once it was looked at again.")
    public RestResponse<List<Recorded>> observe(
            @PathParam("id") long courseId, @Nullable NewFactOfMany seen) {
        var checked = inputs.check(seen);
        var outcome = observations.observe(user.actor(), courseId, checked);
        if (!outcome.asked().isEmpty()) {
            throw odd(checked, outcome.asked());
        }
        return RestResponse.ok(outcome.stored().stream().map(ManyTreesResource::told).toList());
    }

    @POST
    @Idempotent
    @Path("courses/{id}/sign-offs")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(
            summary = "Sign several reported steps off, all or none",
            description = "Each is named with the version of it that was looked at.")
    public RestResponse<List<Step>> signOff(
            @PathParam("id") long courseId, @Nullable NewSignOffs wanted) {
        return RestResponse.ok(signOffs.signOffAll(user.actor(), courseId, inputs.check(wanted)));
    }

    private static Recorded told(Observation stored) {
        return new Recorded(stored.treeId(), stored.id());
    }

    private static Refused odd(NewFactOfMany seen, List<ManyObservations.AskedOf> asked) {
        var trees = seen.trees().stream().map(NewFactOfMany.OfTree::treeId).toList();
        var faults = new ArrayList<Fault>();
        for (var one : asked) {
            faults.add(
                    new Fault(
                            "trees[%d].confirmed".formatted(trees.indexOf(one.treeId())),
                            "%s: %s Key: %s"
                                    .formatted(
                                            one.tree(),
                                            one.question().question(),
                                            one.question().key())));
        }
        return new Refused(
                new Problem(
                        ASKED,
                        "odd-values",
                        "Some values look odd",
                        "Some values look odd; nothing was saved.",
                        "Maybe look once more, then send each key as confirmed of its tree.",
                        faults));
    }
}
