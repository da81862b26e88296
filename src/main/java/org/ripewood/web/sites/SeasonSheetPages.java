package org.ripewood.web.sites;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.condition.SchoolShoots;
import org.ripewood.course.Species;
import org.ripewood.platform.CurrentUser;
import org.ripewood.sites.Site;
import org.ripewood.trees.SeasonSheet;
import org.ripewood.trees.SeasonSheets;
import org.ripewood.web.kit.Answer;

/** A species' year at a site, all techniques across, for a teacher to read against it. */
@Path("/content/species/{code}/season")
@Authenticated
class SeasonSheetPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance season(
                SeasonSheet sheet, List<Site> sites, @Nullable ShootTable shoots);
    }

    private final CurrentUser user;
    private final SeasonSheets sheets;
    private final SchoolShoots shoots;

    SeasonSheetPages(CurrentUser user, SeasonSheets sheets, SchoolShoots shoots) {
        this.shoots = shoots;
        this.user = user;
        this.sheets = sheets;
    }

    @GET
    public Response season(String code, @QueryParam("site") @Nullable Long site) {
        var actor = user.actor();
        var sheet = sheets.of(actor, code, site);
        return Answer.page(Templates.season(sheet, sheets.choice(actor), shoots(sheet.species())));
    }

    private @Nullable ShootTable shoots(Species species) {
        var told = shoots.of(species);
        return told == null ? null : ShootTable.of(told, species.shootsSource(), shoots.isWanted());
    }
}
