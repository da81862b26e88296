package org.ripewood.api.school;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Asked;
import org.ripewood.lists.Choice;
import org.ripewood.lists.ListKind;
import org.ripewood.lists.ListOutcome;
import org.ripewood.lists.Lists;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.http.SentText;

/** Lists of people, trees and readings. */
@Path("/api/v1")
@RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Lists")
class ListResource {

    private static final String CSV = "text/csv";

    private final Lists lists;
    private final CurrentUser user;

    ListResource(Lists lists, CurrentUser user) {
        this.lists = lists;
        this.user = user;
    }

    @GET
    @Path("lists/{kind}")
    @Produces(CSV)
    @Operation(summary = "A list to begin with: people, trees or readings")
    public String sample(@PathParam("kind") String kind) {
        return kind(kind).sample();
    }

    @POST
    @Path("lists/{kind}")
    @RateLimited
    @Consumes(CSV)
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(
            summary = "Enter a list of people, trees or readings",
            description =
                    "UTF-8, separated by commas or semicolons. A dry run unless choice is"
                            + " ALL_OR_NOTHING or GOOD_ROWS; every fault is told by line and column."
                            + " People are for registrars, by a session and by no token. At most 1 MB"
                            + " and 5,000 rows.")
    public ListOutcome take(
            @PathParam("kind") String kind,
            @QueryParam("choice") @Nullable String choice,
            @RequestBody(content = @Content(schema = @Schema(type = SchemaType.STRING)))
                    byte @Nullable [] text) {
        var asked = Asked.oneOf("choice", choice, Choice.class);
        var of = kind(kind);
        if (of == ListKind.PEOPLE) {
            // looked through only as well: it says which logins are taken
            user.requireSession("enter persons");
        }
        return lists.take(
                user.actor(), of, SentText.utf8("", text), asked == null ? Choice.DRY_RUN : asked);
    }

    private static ListKind kind(String typed) {
        return Objects.requireNonNull(Asked.oneOf("kind", typed, ListKind.class));
    }
}
