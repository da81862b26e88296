package org.ripewood.api.trees;

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
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.EarlierWords;
import org.ripewood.trees.HandOver;
import org.ripewood.trees.HandOvers;
import org.ripewood.trees.NewDeparture;
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
    private final HandOvers handOvers;
    private final Departures departures;
    private final CurrentUser user;
    private final Inputs inputs;

    TreeResource(
            Trees trees,
            HandOvers handOvers,
            Departures departures,
            CurrentUser user,
            Inputs inputs) {
        this.trees = trees;
        this.handOvers = handOvers;
        this.departures = departures;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("trees")
    @Operation(
            summary = "Trees within reach, by label; of one keeper or course when asked",
            description = "Trees that left the school are found with left=true, and only so.")
    public Paged<Tree> list(
            @QueryParam("keeper") @Nullable String keeper,
            @QueryParam("course") @Nullable String course,
            @QueryParam("left") @Nullable String left,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        var keeperId = Asked.id("keeper", keeper);
        var courseId = Asked.id("course", course);
        return Asked.yes("left", left)
                ? trees.left(user.actor(), keeperId, courseId, Asked.page(page, size))
                : trees.list(user.actor(), keeperId, courseId, Asked.page(page, size));
    }

    @POST
    @Idempotent
    @Path("trees")
    @Operation(summary = "Enter a tree, at a site whose place one may see")
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
                            + " in their own words, stays with them. A tree that left the school is"
                            + " taken in again this way, by its last keeper too.")
    public RestResponse<HandedOver> handOver(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable HandOver to) {
        var version = Versions.required(ifMatch);
        var checked = inputs.check(to);
        var tree = handOvers.handOver(user.actor(), id, version, checked);
        return Answers.versioned(
                tree.version(), new HandedOver(tree.id(), tree.keeperId(), checked.since()));
    }

    @POST
    @Path("trees/{id}/leave")
    @Operation(
            summary = "Let a tree leave the school",
            description =
                    "Its record is closed: it may be read, and every change is answered with 409."
                            + " Its steps under way are taken back and its places in classes ahead"
                            + " given up.")
    public RestResponse<Tree> leave(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewDeparture going) {
        var version = Versions.required(ifMatch);
        var left = departures.leave(user.actor(), id, version, inputs.check(going));
        return Answers.versioned(left.version(), left);
    }

    @GET
    @Path("trees/{id}/departures")
    @Operation(summary = "When a tree left the school and how, the last time first")
    public List<Departure> departures(@PathParam("id") long id) {
        return departures.of(user.actor(), id);
    }

    @GET
    @Path("trees/{id}/earlier-words")
    @Operation(
            summary = "What was said of a tree's origin and in its note before, the latest first",
            description =
                    "A former keeper's words are told to those only who reach that person, there and"
                            + " in the tree itself.")
    public List<EarlierWords> earlierWords(@PathParam("id") long id) {
        return trees.earlierWords(user.actor(), id);
    }

    @PUT
    @Path("trees/{id}")
    @Operation(
            summary = "Change a tree's label, site, origin and note",
            description =
                    "Another origin or note counts from now on, and the earlier one stays. Who reads"
                            + " none because a former keeper wrote it leaves it by sending none.")
    public RestResponse<Tree> change(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewTree tree) {
        var version = Versions.required(ifMatch);
        var changed = trees.change(user.actor(), id, version, inputs.check(tree));
        return Answers.versioned(changed.version(), changed);
    }
}
