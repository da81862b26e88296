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
        static native TemplateInstance season(SeasonSheet sheet, List<Site> sites);
    }

    private final CurrentUser user;
    private final SeasonSheets sheets;

    SeasonSheetPages(CurrentUser user, SeasonSheets sheets) {
        this.user = user;
        this.sheets = sheets;
    }

    @GET
    public Response season(String code, @QueryParam("site") @Nullable Long site) {
        var actor = user.actor();
        return Answer.page(Templates.season(sheets.of(actor, code, site), sheets.choice(actor)));
    }
}
