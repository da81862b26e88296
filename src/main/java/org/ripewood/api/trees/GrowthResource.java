package org.ripewood.api.trees;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Asked;
import org.ripewood.condition.TreeStates;
import org.ripewood.platform.CurrentUser;
import org.ripewood.trees.TreeDays;

/** What growing will bring about: wounds that close, a trunk that thickens. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Growth")
class GrowthResource {

    private final TreeStates treeStates;
    private final CurrentUser user;
    private final TreeDays treeDays;

    GrowthResource(TreeStates treeStates, CurrentUser user, TreeDays treeDays) {
        this.treeStates = treeStates;
        this.user = user;
        this.treeDays = treeDays;
    }

    @GET
    @Path("trees/{id}/wounds/{woundId}/closing")
    @Operation(summary = "When a wound is likely to have closed, and what that rests on")
    public ClosingAnswer closing(
            @PathParam("id") long id,
            @PathParam("woundId") long woundId,
            @QueryParam("on") @Nullable String on) {
        var day = Asked.day("on", on, treeDays.at(id));
        return ClosingAnswer.of(treeStates.closing(user.actor(), id, woundId, day));
    }

    @GET
    @Path("trees/{id}/trunk")
    @Operation(summary = "The trunk's profile, and when its base is likely to be as planned")
    public TrunkAnswer trunk(@PathParam("id") long id, @QueryParam("on") @Nullable String on) {
        var day = Asked.day("on", on, treeDays.at(id));
        return TrunkAnswer.of(treeStates.growth(user.actor(), id, day).trunk());
    }
}
