package org.ripewood.web.life;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.life.Life;
import org.ripewood.life.LifeMaker;
import org.ripewood.platform.CurrentUser;
import org.ripewood.standing.Standings;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.Answer;

/** A tree's life: how it got here, and when it will get there. */
@Path("/trees/{id: \\d{1,18}}/life")
@Authenticated
class LifePages {

    /** What the page shows. */
    record LifeSheet(Tree tree, Life life, LifeDrawings drawing) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance life(LifeSheet sheet);
    }

    private final CurrentUser user;
    private final Standings standings;
    private final LifeMaker lifeMaker;

    LifePages(CurrentUser user, Standings standings, LifeMaker lifeMaker) {
        this.user = user;
        this.standings = standings;
        this.lifeMaker = lifeMaker;
    }

    /** Until is the last year told of; without it the latest years are. */
    @GET
    public Response life(long id, @QueryParam("until") @Nullable Integer until) {
        var actor = user.actor();
        var look = standings.lookToday(actor, id);
        var life = lifeMaker.of(look, until);
        var tree = look.tree();
        return Answer.page(Templates.life(new LifeSheet(tree, life, LifeDrawings.of(tree, life))));
    }
}
