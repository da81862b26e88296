package org.ripewood.print;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.ripewood.platform.CurrentUser;

/** The record that travels with a tree when it changes hands. */
@Path("/trees/{id: \\d{1,18}}/passport")
@Authenticated
class PassportPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance passport(Passport passport);
    }

    private final CurrentUser user;
    private final PassportAssembler desk;

    PassportPages(CurrentUser user, PassportAssembler desk) {
        this.user = user;
        this.desk = desk;
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public String passport(long id) {
        return Templates.passport(desk.lay(user.actor(), id)).render();
    }
}
