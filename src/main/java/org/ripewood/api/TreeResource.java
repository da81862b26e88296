package org.ripewood.api;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.AnsweredOnce;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Inputs;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Versions;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.NewTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Trees in training. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Trees")
class TreeResource {

    private final Trees trees;
    private final CurrentUser user;
    private final Inputs inputs;

    TreeResource(Trees trees, CurrentUser user, Inputs inputs) {
        this.trees = trees;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("trees")
    @Operation(summary = "Trees within reach, by label; of one keeper or course when asked")
    public Paged<Tree> list(
            @QueryParam("keeper") @Nullable String keeper,
            @QueryParam("course") @Nullable String course,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return trees.list(
                user.actor(),
                Asked.id("keeper", keeper),
                Asked.id("course", course),
                Asked.page(page, size));
    }

    @POST
    @AnsweredOnce
    @Path("trees")
    @Operation(summary = "Enter a tree")
    @APIResponseSchema(value = Tree.class, responseCode = "201", responseDescription = "Entered")
    public RestResponse<Tree> enter(@Nullable NewTree tree) {
        var entered = trees.enter(user.actor(), inputs.check(tree));
        return Answers.created("trees/" + entered.id(), entered.version(), entered);
    }

    @GET
    @Path("trees/{id}")
    @Operation(summary = "A tree, with its version as ETag")
    public RestResponse<Tree> get(
            @PathParam("id") long id, @HeaderParam("If-None-Match") @Nullable String known) {
        var tree = trees.get(user.actor(), id);
        return Answers.versioned(known, tree.version(), tree);
    }

    @POST
    @Path("trees/{id}/hand-over")
    @Operation(
            summary = "Hand a tree over to another keeper",
            description =
                    "To somebody who shares a course with whoever does it; a registrar to anybody."
                            + " The record goes along; who the keeper of now is, and what they wrote"
                            + " in their own words, stays with them.")
    public RestResponse<HandedOver> handOver(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable HandOver to) {
        var version = Versions.required(ifMatch);
        var checked = inputs.check(to);
        var tree = trees.handOver(user.actor(), id, version, checked);
        return Answers.versioned(
                tree.version(), new HandedOver(tree.id(), tree.keeperId(), checked.since()));
    }

    @PUT
    @Path("trees/{id}")
    @Operation(summary = "Change a tree's label, site, origin and note")
    public RestResponse<Tree> change(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewTree tree) {
        var version = Versions.required(ifMatch);
        var changed = trees.change(user.actor(), id, version, inputs.check(tree));
        return Answers.versioned(changed.version(), changed);
    }
}
