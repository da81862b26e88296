package org.ripewood.api.search;

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
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Asked;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Paged;
import org.ripewood.platform.problems.Refused;
import org.ripewood.search.Finder;
import org.ripewood.search.Found;
import org.ripewood.search.Hit;
import org.ripewood.search.Kind;

/** Finds trees, people, courses and what is taught by words. */
@Path("/api/v1/search")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
@Tag(name = "Search")
class SearchResource {

    private final Finder finder;
    private final CurrentUser user;

    SearchResource(Finder finder, CurrentUser user) {
        this.finder = finder;
        this.user = user;
    }

    @GET
    @Operation(
            summary = "Everything within reach that answers to words, kind by kind, ten of each",
            description =
                    "All words must be found, as parts of words, in any case, with or without"
                            + " accents; q has at most 80 letters.")
    public Found find(@QueryParam("q") @Nullable String q) {
        return finder.find(user.actor(), q == null ? "" : q);
    }

    @GET
    @Path("{kind}")
    @Operation(
            summary = "All that is found of one kind, page by page",
            description =
                    "The kind is tree, person, course, technique, lesson, species, rubric or word.")
    public Paged<Hit> all(
            @PathParam("kind") String kind,
            @QueryParam("q") @Nullable String q,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return finder.all(user.actor(), q == null ? "" : q, kind(kind), Asked.page(page, size));
    }

    private static Kind kind(String word) {
        for (var kind : Kind.values()) {
            if (kind.name().toLowerCase(Locale.ROOT).equals(word)) {
                return kind;
            }
        }
        throw Refused.notFound("kind of thing", word);
    }
}
