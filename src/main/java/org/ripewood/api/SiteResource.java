package org.ripewood.api;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Inputs;
import org.ripewood.trees.NewSite;
import org.ripewood.trees.Site;
import org.ripewood.trees.Trees;

/** Where trees stand. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Sites")
class SiteResource {

    private final Trees trees;
    private final CurrentUser user;
    private final Inputs inputs;

    SiteResource(Trees trees, CurrentUser user, Inputs inputs) {
        this.trees = trees;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("sites")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "All sites, by name")
    public List<Site> list() {
        return trees.sites();
    }

    @POST
    @Path("sites")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Enter a site")
    @APIResponseSchema(value = Site.class, responseCode = "201", responseDescription = "Entered")
    public RestResponse<Site> enter(@Nullable NewSite site) {
        var entered = trees.enterSite(user.actor(), inputs.check(site));
        return Answers.created("sites", entered);
    }
}
