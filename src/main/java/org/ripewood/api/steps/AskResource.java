package org.ripewood.api.steps;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.asks.Ask;
import org.ripewood.asks.Asks;
import org.ripewood.asks.NewAnswer;
import org.ripewood.asks.NewAsk;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;

/** What keepers ask of their instructors at a technique, and the answers. */
@Path("/api/v1/trees/{id}/asks")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Steps")
class AskResource {

    private final Asks asks;
    private final CurrentUser user;
    private final Inputs inputs;

    AskResource(Asks asks, CurrentUser user, Inputs inputs) {
        this.asks = asks;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "What was asked of the tree, latest first, at most 50")
    public List<Ask> of(@PathParam("id") long treeId) {
        return asks.of(user.actor(), treeId);
    }

    @POST
    @Idempotent
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Ask for a step, or put a question at a technique; the tree's keeper only",
            description = "The same words again count once while nobody has answered.")
    @APIResponseSchema(value = Ask.class, responseCode = "201", responseDescription = "Asked")
    public RestResponse<Ask> ask(@PathParam("id") long treeId, @Nullable NewAsk asked) {
        var ask = asks.ask(user.actor(), treeId, inputs.check(asked));
        return Answers.created("trees/" + treeId + "/asks", ask);
    }

    @POST
    @Path("{ask}/answer")
    @RolesAllowed(INSTRUCTOR_NAME)
    @Operation(
            summary = "Answer in words; an ask for a step is answered by assigning it, too",
            description = "The same words again count once; other words are answered with 409.")
    public Ask answer(
            @PathParam("id") long treeId,
            @PathParam("ask") long askId,
            @Nullable NewAnswer answer) {
        return asks.answer(user.actor(), treeId, askId, inputs.check(answer));
    }

    @DELETE
    @Path("{ask}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Take back what was asked and not answered; whoever asked only")
    public Ask takeBack(@PathParam("id") long treeId, @PathParam("ask") long askId) {
        return asks.takeBack(user.actor(), treeId, askId);
    }
}
