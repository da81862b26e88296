package org.ripewood.api.school;

import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Asked;
import org.ripewood.audit.Audit;
import org.ripewood.audit.AuditEntry;
import org.ripewood.audit.AuditQuestion;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;

/** Who did what, for registrars. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Audit")
class AuditResource {

    private final Audit audit;
    private final CurrentUser user;

    AuditResource(Audit audit, CurrentUser user) {
        this.audit = audit;
        this.user = user;
    }

    @GET
    @Path("audit")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary =
                    "Who did what, the latest first; by person, days and the table of changed rows")
    public Paged<AuditEntry> entries(
            @QueryParam("person") @Nullable String person,
            @QueryParam("from") @Nullable String from,
            @QueryParam("to") @Nullable String to,
            @QueryParam("thing") @Nullable String thing,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        var question =
                new AuditQuestion(
                        Asked.id("person", person),
                        Asked.dayIfAny("from", from),
                        Asked.dayIfAny("to", to),
                        thing);
        return audit.entries(user.actor(), question, Asked.page(page, size));
    }
}
