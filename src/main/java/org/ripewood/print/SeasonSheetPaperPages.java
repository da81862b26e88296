package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.trees.SeasonSheet;
import org.ripewood.trees.SeasonSheets;

/** A species' year at a site on paper, to be corrected by hand. */
@Path("/content/species/{code}")
@Authenticated
class SeasonSheetPaperPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance season(SeasonSheet sheet);
    }

    private final CurrentUser user;
    private final SeasonSheets sheets;

    SeasonSheetPaperPages(CurrentUser user, SeasonSheets sheets) {
        this.user = user;
        this.sheets = sheets;
    }

    @GET
    @Path("season/print")
    @Produces(MediaType.TEXT_HTML)
    public String season(String code, @QueryParam("site") @Nullable Long site) {
        return Templates.season(sheets.of(user.actor(), code, site)).render();
    }

    @GET
    @Path("season.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response pdf(
            String code,
            @QueryParam("site") @Nullable Long site,
            @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(season(code, site), size);
    }
}
