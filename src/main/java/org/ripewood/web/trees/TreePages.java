package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.ripewood.platform.CurrentUser;
import org.ripewood.web.kit.Answer;

/** A tree's portrait: where it is on its way, and what is next. */
@Path("/trees/{id: \\d{1,18}}")
@Authenticated
class TreePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance tree(TreePageModel sheet);
    }

    private final CurrentUser user;
    private final TreePageAssembler desk;

    TreePages(CurrentUser user, TreePageAssembler desk) {
        this.user = user;
        this.desk = desk;
    }

    @GET
    public Response tree(long id) {
        return Answer.page(Templates.tree(desk.lay(user.actor(), id)));
    }
}
