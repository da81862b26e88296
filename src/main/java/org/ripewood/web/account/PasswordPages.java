package org.ripewood.web.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import org.ripewood.accounts.PasswordLinks;
import org.ripewood.people.Person;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.signin.DirectSignIn;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/**
 * A password by link, for those who cannot sign in: whoever has the link may choose it, and whoever
 * has none may ask for one.
 */
@Path("/password")
@PermitAll
class PasswordPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance choose(Person person, String secret, FormState typed);

        static native TemplateInstance forgotten(boolean noted, FormState typed);
    }

    private static final String WISH = "wish";

    private final PasswordLinks links;
    private final Inputs inputs;
    private final DirectSignIn signIn;

    PasswordPages(PasswordLinks links, Inputs inputs, DirectSignIn signIn) {
        this.signIn = signIn;
        this.links = links;
        this.inputs = inputs;
    }

    @GET
    @Path("forgotten")
    public Response forgotten() {
        return Answer.page(Templates.forgotten(false, FormState.fresh(WISH)));
    }

    @POST
    @Path("forgotten")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response wish(MultivaluedMap<String, String> form) {
        return Answer.orAgain(
                () -> {
                    var login = form.getFirst("login");
                    links.wish(login == null ? "" : login);
                    return Templates.forgotten(true, FormState.fresh(WISH));
                },
                problem -> Templates.forgotten(false, FormState.refused(WISH, form, problem)));
    }

    /** Looking does not use the link up: mail programs look, too. */
    @GET
    @Path("{secret: [A-Za-z0-9_-]{43}}")
    public Response choose(String secret) {
        return Answer.page(
                Templates.choose(links.get(secret), secret, FormState.fresh("password")));
    }

    @POST
    @Path("{secret: [A-Za-z0-9_-]{43}}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response choose(String secret, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var chosen = inputs.read(form, ChosenPassword.class).newPassword();
                    return signIn.open(links.use(secret, chosen)) ? "/home" : "/sign-in?chosen=yes";
                },
                problem ->
                        Templates.choose(
                                links.get(secret),
                                secret,
                                FormState.refused("password", form, problem)));
    }
}
