package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.ripewood.course.CourseContent;
import org.ripewood.platform.CurrentUser;
import org.ripewood.trees.Trees;

/** The card that hangs on a tree. */
@Path("/trees/{id: \\d{1,18}}/card")
@Authenticated
class CardPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance card(TreeCard card);
    }

    private final CurrentUser user;
    private final Trees trees;
    private final CourseContent content;
    private final UriInfo uris;

    CardPages(CurrentUser user, Trees trees, CourseContent content, UriInfo uris) {
        this.user = user;
        this.trees = trees;
        this.content = content;
        this.uris = uris;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public String card(long id) {
        var tree = trees.get(user.actor(), id);
        return Templates.card(TreeCard.of(tree, content.inForce(), uris.getBaseUri())).render();
    }
}
