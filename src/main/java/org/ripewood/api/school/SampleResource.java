package org.ripewood.api.school;

import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.Versions;
import org.ripewood.sample.SampleCourses;
import org.ripewood.sample.SampleSheet;

/** A made-up course to try the service with. */
@Path("/api/v1/sample-course")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(REGISTRAR_NAME)
@Tag(name = "School")
class SampleResource {

    private static final String PATH = "sample-course";

    private final SampleCourses samples;
    private final CurrentUser user;

    SampleResource(SampleCourses samples, CurrentUser user) {
        this.samples = samples;
        this.user = user;
    }

    @GET
    @Operation(
            summary = "The sample course, and what goes with it when it is thrown away",
            description = "404 while there is none. Its version, as ETag, is the course's number.")
    public RestResponse<SampleSheet> get() {
        var sheet = samples.required(user.actor());
        return Answers.versioned(sheet.courseId(), sheet);
    }

    @POST
    @Operation(
            summary = "Add the sample course",
            description =
                    "Made up, marked as a sample on every page, and taught by whoever adds it, who"
                            + " has to be an instructor as well. 409 when there is one already. It"
                            + " enters persons, though nobody can sign in as them, and so is added"
                            + " by a session only.")
    @APIResponseSchema(
            value = SampleSheet.class,
            responseCode = "201",
            responseDescription = "Added")
    public RestResponse<SampleSheet> add() {
        user.requireSession("add the sample course, which enters persons");
        samples.add(user.actor());
        var sheet = samples.required(user.actor());
        return Answers.created(PATH, sheet.courseId(), sheet);
    }

    @DELETE
    @Operation(
            summary = "Throw the sample course away",
            description =
                    "With its sessions, made-up people, their trees and all that is recorded of"
                            + " them; nothing of the school's own is touched. Answers what went. By a session only.")
    public SampleSheet throwAway(@HeaderParam("If-Match") @Nullable String ifMatch) {
        user.requireSession("throw the sample course away, and its persons with it");
        return samples.throwAway(user.actor(), Versions.required(ifMatch));
    }
}
