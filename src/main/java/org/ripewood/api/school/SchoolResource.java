package org.ripewood.api.school;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.school.NewSchoolName;
import org.ripewood.school.SchoolName;
import org.ripewood.school.Schools;

/** What the school is called. */
@Path("/api/v1/school")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "School")
class SchoolResource {

    private final Schools school;
    private final CurrentUser user;
    private final Inputs inputs;

    SchoolResource(Schools school, CurrentUser user, Inputs inputs) {
        this.school = school;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "What the school is called, with the version as ETag; empty without a name")
    public RestResponse<SchoolName> get() {
        var now = school.get();
        return Answers.versioned(now.version(), now);
    }

    @PUT
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Name the school")
    public RestResponse<SchoolName> name(
            @HeaderParam("If-Match") @Nullable String ifMatch, @Nullable NewSchoolName wanted) {
        var version = Versions.required(ifMatch);
        var named = school.name(user.actor(), version, inputs.check(wanted));
        return Answers.versioned(named.version(), named);
    }
}
