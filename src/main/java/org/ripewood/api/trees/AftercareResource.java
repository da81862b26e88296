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
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.CareTask;
import org.ripewood.aftercare.NewWord;
import org.ripewood.aftercare.Saying;
import org.ripewood.api.kit.Asked;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.once.Idempotent;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.trees.TreeDays;

/** Care after work on a tree, and what its keeper says of it. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Aftercare")
class AftercareResource {

    private static final String TASK = "trees/{id}/aftercare/{task: [0-9a-z_-]{1,80}}/";

    private final Aftercare aftercare;
    private final CurrentUser user;
    private final Inputs inputs;
    private final TreeDays treeDays;

    AftercareResource(Aftercare aftercare, CurrentUser user, Inputs inputs, TreeDays treeDays) {
        this.aftercare = aftercare;
        this.user = user;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    @Path("trees/{id}/aftercare")
    @Operation(
            summary = "Care after work on the tree as it stands on a day, what is due first",
            description =
                    "Tasks follow from the work in the record and the content in force: late, due,"
                            + " waiting, then those done or over within 60 days. measuring holds"
                            + " the days of the next 60 by which wounds or trunk are to be"
                            + " measured again.")
    public CareAnswer of(@PathParam("id") long id, @QueryParam("on") @Nullable String on) {
        return CareAnswer.of(aftercare.of(user.actor(), id, Asked.day("on", on, treeDays.at(id))));
    }

    @POST
    @Idempotent
    @Path(TASK + "done")
    @Operation(
            summary = "Say that a task was done",
            description =
                    "The same word sent twice counts once. On a task already spoken of another"
                            + " word is answered with 409, unless corrects is true: then it stands"
                            + " for the earlier one, which is kept.")
    public CareTask done(
            @PathParam("id") long id, @PathParam("task") String task, @Nullable NewWord word) {
        return say(id, task, Saying.DONE, word);
    }

    @POST
    @Idempotent
    @Path(TASK + "not-needed")
    @Operation(summary = "Say that a task is not needed; a look that repeats ends for good")
    public CareTask notNeeded(
            @PathParam("id") long id, @PathParam("task") String task, @Nullable NewWord word) {
        return say(id, task, Saying.NOT_NEEDED, word);
    }

    @POST
    @Idempotent
    @Path(TASK + "taken-back")
    @Operation(summary = "Say that what was said of a task was a slip; it is open again")
    public CareTask takenBack(
            @PathParam("id") long id, @PathParam("task") String task, @Nullable NewWord word) {
        return say(id, task, Saying.TAKEN_BACK, word);
    }

    private CareTask say(long id, String task, Saying what, @Nullable NewWord word) {
        return aftercare.say(user.actor(), id, task, what, inputs.check(word));
    }
}
