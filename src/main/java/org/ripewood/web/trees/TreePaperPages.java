package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.ripewood.platform.CurrentUser;
import org.ripewood.trees.Departure;
import org.ripewood.trees.Departures;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;

/** A tree's papers and files, and whose it is: to print, to take along, to change, to give away. */
@Path("/trees/{id: \\d{1,18}}/papers")
@Authenticated
class TreePaperPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance papers(Tree tree, List<Departure> departures);
    }

    private final CurrentUser user;
    private final Trees trees;
    private final Departures departures;

    TreePaperPages(CurrentUser user, Trees trees, Departures departures) {
        this.user = user;
        this.trees = trees;
        this.departures = departures;
    }

    @GET
    public Response papers(long id) {
        var actor = user.actor();
        return Answer.page(Templates.papers(trees.get(actor, id), departures.of(actor, id)));
    }
}
