package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.ripewood.classday.ClassDays;
import org.ripewood.classday.SessionPlan;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;

/** A class day on paper: who does what at which bench, with what, and what to mind. */
@Path("/sessions/{id: \\d{1,18}}/plan")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class PlanPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance plan(SessionPlan plan);
    }

    private final CurrentUser user;
    private final ClassDays days;

    PlanPages(CurrentUser user, ClassDays days) {
        this.user = user;
        this.days = days;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public String plan(long id) {
        return Templates.plan(days.plan(user.actor(), id)).render();
    }
}
