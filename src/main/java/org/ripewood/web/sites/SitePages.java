package org.ripewood.web.sites;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.http.FileParts;
import org.ripewood.platform.http.SentText;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Refused;
import org.ripewood.sites.NewSite;
import org.ripewood.sites.SiteLine;
import org.ripewood.sites.Zone;
import org.ripewood.trees.TreeSites;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Versioned;

/** Sites: what is known of their temperatures, and the season there. */
@Path("/sites")
@Authenticated
class SitePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sites(List<SiteLine> sites);

        static native TemplateInstance site(SitePageModel sheet);

        static native TemplateInstance add(NewSiteSheet sheet);
    }

    /**
     * @param asked what was asked for, with what is wrong with it
     * @param found places that were meant; one is taken into the form
     * @param site the form that enters it; null until one place is found
     */
    record NewSiteSheet(
            FormState asked,
            List<PlaceForm.Found> found,
            @Nullable FormState site,
            Map<String, List<Zone>> zones) {}

    private static final int NOT_FOUND = 404;

    private final CurrentUser user;
    private final TreeSites treeSites;
    private final SitePageAssembler sheets;
    private final Inputs inputs;

    SitePages(CurrentUser user, TreeSites treeSites, SitePageAssembler sheets, Inputs inputs) {
        this.user = user;
        this.treeSites = treeSites;
        this.sheets = sheets;
        this.inputs = inputs;
    }

    @GET
    public Response sites() {
        return Answer.page(Templates.sites(treeSites.list(user.actor())));
    }

    /** Finds where a site lies, by the name of a town or by coordinates, and asks for the rest. */
    @GET
    @Path("new")
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response add(
            @Nullable @QueryParam("place") String place,
            @QueryParam("name") @DefaultValue("") String name) {
        var asked = FormState.fresh("find").withIfKnown("place", place);
        if (place == null) {
            return Answer.page(Templates.add(sheet(asked, List.of(), null)));
        }
        try {
            return Answer.page(Templates.add(found(asked, PlaceForm.find(place), name)));
        } catch (Refused refused) {
            // nothing was to be saved, so it is an answer like any other
            var told = new FormState("find", asked.values(), refused.problem());
            return Answer.question(Templates.add(sheet(told, List.of(), null)));
        }
    }

    private static NewSiteSheet found(FormState asked, List<PlaceForm.Found> found, String name) {
        if (found.size() > 1) {
            return sheet(asked, found, null);
        }
        var one = found.get(0);
        var site =
                FormState.fresh("site")
                        .with("name", name.isBlank() ? one.name() : name)
                        .with("place", one.place())
                        .with("zone", one.zone());
        return sheet(asked, found, site);
    }

    private static NewSiteSheet sheet(
            FormState asked, List<PlaceForm.Found> found, @Nullable FormState site) {
        var zone = site == null ? null : site.value("zone");
        return new NewSiteSheet(asked, found, site, PlaceForm.zones(zone));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response enter(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var wanted = inputs.read(PlaceForm.inDegrees(form), NewSite.class);
                    return "/sites/" + treeSites.enter(user.actor(), wanted).id();
                },
                problem ->
                        Templates.add(
                                sheet(
                                        FormState.fresh("find"),
                                        List.of(),
                                        FormState.refused("site", form, problem))));
    }

    @GET
    @Path("{id: \\d{1,18}}")
    public Response site(long id, @QueryParam("species") @Nullable String species) {
        return Answer.page(
                Templates.site(
                        sheets.lay(user.actor(), id, species, FormState.fresh("none"), null)));
    }

    @POST
    @Path("{id: \\d{1,18}}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response change(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Versioned.class).version();
                    var wanted = inputs.read(PlaceForm.inDegrees(form), NewSite.class);
                    treeSites.change(user.actor(), id, version, wanted);
                    return "/sites/" + id;
                },
                problem -> page(id, FormState.refused("site", form, problem)));
    }

    /** Faults are told on the page at once; sending the same again changes nothing. */
    @POST
    @Path("{id: \\d{1,18}}/readings")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
    public Response takeReadings(
            long id,
            @RestForm("file") @Nullable FileUpload file,
            @RestForm("text") @Nullable String text) {
        var typed = text == null ? "" : text;
        try {
            FileParts.requireAtMostOne("file");
            var sent = file == null || file.size() == 0 ? typed : read(file);
            var taken = treeSites.importReadings(user.actor(), id, sent);
            return taken.faultCount() == 0
                    ? Answer.seeOther("/sites/" + id + "#readings")
                    : Answer.page(
                            Templates.site(
                                    sheets.lay(
                                            user.actor(),
                                            id,
                                            null,
                                            FormState.fresh("none"),
                                            taken)));
        } catch (Refused refused) {
            var problem = refused.problem();
            if (problem.status() == NOT_FOUND) {
                throw refused;
            }
            return Answer.page(
                    problem.status(),
                    page(id, new FormState("readings", Map.of("text", List.of(typed)), problem)));
        }
    }

    private TemplateInstance page(long id, FormState typed) {
        return Templates.site(sheets.lay(user.actor(), id, null, typed, null));
    }

    private static String read(FileUpload file) {
        try {
            return SentText.utf8("text", Files.readAllBytes(file.uploadedFile()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
