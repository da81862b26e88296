package org.ripewood.platform;

import io.quarkus.security.Authenticated;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.ripewood.platform.problems.Refused;

/** A page door for tests only. */
@Path("/rehearsal")
@Produces(MediaType.TEXT_HTML)
class PageRehearsal {

    private final CurrentUser user;

    PageRehearsal(CurrentUser user) {
        this.user = user;
    }

    @GET
    @Path("mine")
    @Authenticated
    @Operation(hidden = true)
    public String mine() {
        return "<p>" + user.actor().personId() + "</p>";
    }

    @GET
    @Path("office")
    @RolesAllowed(Role.REGISTRAR_NAME)
    @Operation(hidden = true)
    public String office() {
        return "<p>office</p>";
    }

    @GET
    @Path("open")
    @PermitAll
    @Operation(hidden = true)
    public String open() {
        return "<p>" + user.signedIn() + "</p>";
    }

    @GET
    @Path("faults/{what}")
    @PermitAll
    @Operation(hidden = true)
    public String fault(@PathParam("what") String what) {
        throw Refused.invalid("label", "expected <b>something else</b>, found " + what);
    }

    @GET
    @Path("forgotten")
    @Operation(hidden = true)
    public String forgotten() {
        return "<p>nobody said who may read this</p>";
    }

    @POST
    @Path("leave")
    @Authenticated
    @Operation(hidden = true)
    public Response leave() {
        user.signOut();
        return Response.seeOther(URI.create("/sign-in")).build();
    }
}
