package org.ripewood.web.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.ApiToken;
import org.ripewood.accounts.ApiTokens;
import org.ripewood.accounts.CalendarLinks;
import org.ripewood.accounts.NewApiToken;
import org.ripewood.accounts.PasswordChange;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.secondfactor.SecondFactor;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.signin.SignIns;
import org.ripewood.signin.SignedIn;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.FormState;

/** One's own account: who one is here, and a new password. */
@Path("/account")
@Authenticated
class AccountPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance account(
                Person person,
                boolean changed,
                FormState typed,
                SecondFactor secondFactor,
                List<SignedIn> signedIn,
                @Nullable Long here,
                List<ApiToken> tokens,
                @Nullable String token,
                @Nullable Instant linkMadeAt,
                @Nullable String link);
    }

    private final CurrentUser user;
    private final PasswordChange passwordChange;
    private final People people;
    private final SignIns signIns;
    private final ApiTokens tokens;
    private final CalendarLinks links;
    private final SecondFactors factors;
    private final Inputs inputs;
    private final ConfirmForms confirming;

    AccountPages(
            CurrentUser user,
            PasswordChange passwordChange,
            People people,
            SignIns signIns,
            ApiTokens tokens,
            CalendarLinks links,
            SecondFactors factors,
            Inputs inputs,
            ConfirmForms confirming) {
        this.confirming = confirming;
        this.user = user;
        this.passwordChange = passwordChange;
        this.people = people;
        this.signIns = signIns;
        this.tokens = tokens;
        this.links = links;
        this.factors = factors;
        this.inputs = inputs;
    }

    @GET
    public Response account(@QueryParam("changed") @Nullable String changed) {
        return Answer.page(page(changed != null, FormState.fresh("password")));
    }

    @POST
    @Path("password")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response changePassword(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var change = inputs.read(form, NewPassword.class);
                    passwordChange.change(
                            user.actor(),
                            user.session(),
                            change.oldPassword(),
                            change.newPassword());
                    return "/account?changed=yes";
                },
                problem -> page(false, FormState.refused("password", form, problem)));
    }

    /** Ends every session, this one as well. */
    @POST
    @Path("sign-out-everywhere")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response signOutEverywhere(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () -> {
                    signIns.endEverywhere(user.actor());
                    user.signOut();
                    return Answer.seeOther("/sign-in");
                });
    }

    @POST
    @Path("sessions/{id: \\d{1,18}}/end")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response endSession(long id, MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () -> {
                    signIns.endOne(user.actor(), id);
                    return Answer.seeOther("/account#signed-in");
                });
    }

    /** Makes a token for a program and shows it this once. */
    @POST
    @Path("tokens")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response makeToken(MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.orAgain(
                                () -> {
                                    var wanted = inputs.read(form, NewApiToken.class);
                                    var made = tokens.make(user.actor(), wanted);
                                    return page(
                                            false,
                                            FormState.fresh("password"),
                                            null,
                                            made.secret());
                                },
                                problem -> page(false, FormState.refused("token", form, problem))));
    }

    @POST
    @Path("tokens/{id: \\d{1,18}}/end")
    public Response endToken(long id) {
        tokens.end(user.actor(), id);
        return Answer.seeOther("/account#tokens");
    }

    /** Makes a link, or another in its place, and shows it this once. */
    @POST
    @Path("calendar")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response makeLink(MultivaluedMap<String, String> form, @Context UriInfo uri) {
        return confirming.first(
                form,
                () -> {
                    var secret = links.make(user.actor());
                    var link = uri.getBaseUriBuilder().path("calendar/" + secret + ".ics").build();
                    return Answer.page(
                            page(false, FormState.fresh("password"), link.toString(), null));
                });
    }

    @POST
    @Path("calendar/revoke")
    public Response revokeLink() {
        links.revoke(user.actor());
        return Answer.seeOther("/account#calendar");
    }

    private TemplateInstance page(boolean changed, FormState typed) {
        return page(changed, typed, null, null);
    }

    private TemplateInstance page(
            boolean changed, FormState typed, @Nullable String link, @Nullable String token) {
        var actor = user.actor();
        return Templates.account(
                people.get(actor, actor.personId()),
                changed,
                typed,
                factors.of(actor),
                signIns.of(actor),
                user.session(),
                tokens.of(actor),
                token,
                links.madeAt(actor).orElse(null),
                link);
    }
}
