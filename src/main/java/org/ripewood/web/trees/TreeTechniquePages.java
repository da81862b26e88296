package org.ripewood.web.trees;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.ripewood.platform.CurrentUser;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** How every technique stands for a tree. */
@Path("/trees/{id: \\d{1,18}}")
@Authenticated
class TreeTechniquePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance techniques(TreeTechniqueModel sheet);
    }

    private final CurrentUser user;
    private final TreeTechniqueAssembler desk;

    TreeTechniquePages(CurrentUser user, TreeTechniqueAssembler desk) {
        this.user = user;
        this.desk = desk;
    }

    @GET
    @Path("techniques")
    public Response techniques(long id) {
        return Answer.page(
                Templates.techniques(desk.lay(user.actor(), id, FormState.fresh("none"))));
    }
}
