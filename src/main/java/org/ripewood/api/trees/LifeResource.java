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
import org.ripewood.life.Life;
import org.ripewood.life.LifeMaker;
import org.ripewood.platform.CurrentUser;

/** What a tree went through, and what is ahead of it. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Growth")
class LifeResource {

    private final LifeMaker lifeMaker;
    private final CurrentUser user;

    LifeResource(LifeMaker lifeMaker, CurrentUser user) {
        this.lifeMaker = lifeMaker;
        this.user = user;
    }

    @GET
    @Path("trees/{id}/life")
    @Operation(
            summary = "What the tree went through, year by year, and what is ahead of it",
            description =
                    "Entries of ten years at most, and of fewer when there are many, the latest"
                            + " first; until is the last year told of, and earlierUntil and laterUntil"
                            + " ask for the years before and after. before holds what was so when"
                            + " these years began. ahead and goal are what the route says today;"
                            + " gains tells what the record shows of the current year, and nothing"
                            + " else.")
    public Life life(@PathParam("id") long id, @QueryParam("until") @Nullable String until) {
        return lifeMaker.make(user.actor(), id, Asked.year("until", until));
    }
}
