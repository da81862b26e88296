package org.ripewood.print;

import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.guards.RateLimited;

/** The papers of a tree as PDF, each the same as its page. */
@Path("/trees/{id: \\d{1,18}}")
@Authenticated
class TreePdfPages {

    private final ChecklistPaperPages checklists;
    private final RoutePaperPages routes;
    private final CardPages cards;
    private final PassportPages passports;

    TreePdfPages(
            ChecklistPaperPages checklists,
            RoutePaperPages routes,
            CardPages cards,
            PassportPages passports) {
        this.checklists = checklists;
        this.routes = routes;
        this.cards = cards;
        this.passports = passports;
    }

    @GET
    @Path("checklist.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response checklist(long id, @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(checklists.checklist(id), size);
    }

    @GET
    @Path("route.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response route(
            long id,
            @QueryParam("goal") @Nullable String goal,
            @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(routes.route(id, goal), size);
    }

    @GET
    @Path("card.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response card(long id, @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(cards.card(id), size);
    }

    @GET
    @Path("passport.pdf")
    @RateLimited
    @Produces(PdfAnswer.TYPE)
    public Response passport(long id, @QueryParam("size") @Nullable String size) {
        return PdfAnswer.of(passports.passport(id), size);
    }
}
