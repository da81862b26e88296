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
import java.util.Arrays;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.ripewood.firstlook.FirstLooks;
import org.ripewood.firstlook.Walk;
import org.ripewood.platform.CurrentUser;

/** The first look at a tree: what to ask of it, by eye and with a rule. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Standing")
class FirstLookResource {

    private final FirstLooks firstLooks;
    private final CurrentUser user;

    FirstLookResource(FirstLooks firstLooks, CurrentUser user) {
        this.firstLooks = firstLooks;
        this.user = user;
    }

    @GET
    @Path("trees/{id}/first-look")
    @Operation(
            summary = "What a first look at the tree still has to ask, and what it shows so far",
            description =
                    "Questions that can be answered today by eye and with a rule, that nobody has"
                            + " answered within the age their facts allow, and that would change"
                            + " how a step stands; at most twelve, in the order a teacher asks."
                            + " Answers are sent as observations, with the values told here;"
                            + " lengths as observations or a series of measurements, a cut as a"
                            + " wound with its reading, a container as a container. skipped names"
                            + " questions nobody can answer, with commas between; they are left"
                            + " out.")
    public FirstLookAnswer firstLook(
            @PathParam("id") long id, @QueryParam("skipped") @Nullable String skipped) {
        var codes = Objects.requireNonNullElse(skipped, "");
        Arrays.stream(codes.split(",", -1))
                .filter(code -> !code.isBlank())
                .forEach(FirstLooks::question);
        var look = firstLooks.look(user.actor(), id, Walk.of("", codes));
        return FirstLookAnswer.of(id, look.first());
    }
}
