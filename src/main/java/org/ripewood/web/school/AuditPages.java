package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.ripewood.audit.Audit;
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** The registrar's page of who did what. */
@Path("/audit")
@RolesAllowed(Role.REGISTRAR_NAME)
class AuditPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance audit(AuditPageModel sheet);
    }

    private static final int ROWS = 50;

    private final CurrentUser user;
    private final Audit audit;
    private final People people;
    private final Inputs inputs;

    AuditPages(CurrentUser user, Audit audit, People people, Inputs inputs) {
        this.user = user;
        this.audit = audit;
        this.people = people;
        this.inputs = inputs;
    }

    @GET
    public Response audit(@Context UriInfo uri) {
        var asked = uri.getQueryParameters();
        return Answer.orAgain(
                () -> page(inputs.read(asked, AuditAsked.class), FormState.of("audit", asked)),
                problem -> page(AuditAsked.EVERYTHING, FormState.refused("audit", asked, problem)));
    }

    private TemplateInstance page(AuditAsked asked, FormState typed) {
        var page = new PageRequest(asked.page() == null ? 0 : asked.page(), ROWS);
        var entries = audit.entries(user.actor(), asked.question(user.actor(), people), page);
        var ids = entries.items().stream().flatMap(AuditPageModel::persons).distinct().toList();
        return Templates.audit(
                new AuditPageModel(entries, people.names(ids), audit.things(), typed));
    }
}
