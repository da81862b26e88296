package org.ripewood.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Inputs;

/** One's own account: who one is here, and a new password. */
@Path("/account")
@Authenticated
class AccountPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance account(Person person, boolean changed, Typed typed);
    }

    private final CurrentUser user;
    private final People people;
    private final Inputs inputs;

    AccountPages(CurrentUser user, People people, Inputs inputs) {
        this.user = user;
        this.people = people;
        this.inputs = inputs;
    }

    @GET
    public Response account(@QueryParam("changed") @Nullable String changed) {
        return Answer.page(page(changed != null, Typed.fresh("password")));
    }

    @POST
    @Path("password")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response changePassword(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var change = inputs.read(form, NewPassword.class);
                    people.changePassword(user.actor(), change.oldPassword(), change.newPassword());
                    return "/account?changed=yes";
                },
                problem -> page(false, Typed.refused("password", form, problem)));
    }

    private TemplateInstance page(boolean changed, Typed typed) {
        return Templates.account(people.get(user.actor().personId()), changed, typed);
    }
}
