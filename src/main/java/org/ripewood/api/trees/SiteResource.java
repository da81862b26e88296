package org.ripewood.api.trees;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.core.season.Habit;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.http.SentText;
import org.ripewood.platform.http.Versions;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sites.KnownSite;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.ReadingsImport;
import org.ripewood.sites.Site;
import org.ripewood.sites.SiteLine;
import org.ripewood.trees.TreeSites;

/** Where trees stand. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Sites")
class SiteResource {

    private static final String CSV = "text/csv";

    /** The base most often used for trees of temperate woods; common practice, no source. */
    private static final double BASE_UNLESS_ASKED = 5;

    private final TreeSites treeSites;
    private final CurrentUser user;
    private final Inputs inputs;

    SiteResource(TreeSites treeSites, CurrentUser user, Inputs inputs) {
        this.treeSites = treeSites;
        this.user = user;
        this.inputs = inputs;
    }

    @GET
    @Path("sites")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "All sites, by name, and the place of those within reach")
    public List<SiteLine> list() {
        return treeSites.list(user.actor());
    }

    @POST
    @Path("sites")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Enter a site",
            description =
                    "Everybody may see where the school's own ground lies and enter trees there"
                            + " (schoolGround, no unless said).")
    @APIResponseSchema(value = Site.class, responseCode = "201", responseDescription = "Entered")
    public RestResponse<Site> enter(@Nullable NewSite site) {
        var entered = treeSites.enter(user.actor(), inputs.check(site));
        return Answers.created("sites", entered);
    }

    @GET
    @Path("sites/{id}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "A site and what is known of its temperatures, with its version as ETag")
    public RestResponse<KnownSite> get(@PathParam("id") long id) {
        var known = treeSites.get(user.actor(), id);
        return Answers.versioned(known.site().version(), known);
    }

    @PUT
    @Path("sites/{id}")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Change a site's name, place and monthly means",
            description =
                    "By who entered it, an instructor of most of those whose trees stand there, or a"
                            + " registrar; the same who bring in readings.")
    public RestResponse<KnownSite> change(
            @PathParam("id") long id,
            @HeaderParam("If-Match") @Nullable String ifMatch,
            @Nullable NewSite site) {
        var version = Versions.required(ifMatch);
        var changed = treeSites.change(user.actor(), id, version, inputs.check(site));
        return Answers.versioned(changed.site().version(), changed);
    }

    @POST
    @Path("sites/{id}/readings")
    @Consumes(CSV)
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "Import daily readings",
            description =
                    "A line a day with the columns date, tmin and tmax in °C, or GHCN-Daily's"
                            + " layout by station; UTF-8. Good lines are kept, faulty ones told;"
                            + " a day imported before is read anew. At most 5 MB.")
    public ReadingsImport importReadings(
            @PathParam("id") long id,
            @RequestBody(content = @Content(schema = @Schema(type = SchemaType.STRING)))
                    byte @Nullable [] text) {
        return treeSites.importReadings(user.actor(), id, SentText.utf8("", text));
    }

    @GET
    @Path("sites/{id}/season")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "A growing season day by day: stage, daylight, degree-days of growth",
            description =
                    "Asked for by habit (DECIDUOUS unless told), base temperature in °C (5 unless"
                            + " told) and the year in which the season begins (the present one"
                            + " unless told).")
    public SeasonAnswer season(
            @PathParam("id") long id,
            @QueryParam("habit") @Nullable String habit,
            @QueryParam("base") @Nullable String base,
            @QueryParam("year") @Nullable String year) {
        var asked = Asked.oneOf("habit", habit, Habit.class);
        return SeasonAnswer.of(
                treeSites.season(
                        user.actor(),
                        id,
                        asked == null ? Habit.DECIDUOUS : asked,
                        Asked.number("base", base, BASE_UNLESS_ASKED),
                        Asked.year("year", year)));
    }
}
