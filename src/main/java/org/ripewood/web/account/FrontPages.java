package org.ripewood.web.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.PersonRegistration;
import org.ripewood.people.NewPerson;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.school.NewSchoolName;
import org.ripewood.school.Schools;
import org.ripewood.signin.DirectSignIn;
import org.ripewood.signin.SignIns;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** The way in: sign-in, sign-out, and the first registrar of an empty school. */
@Path("/")
class FrontPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance signIn(
                boolean wrong, @Nullable Long minutes, boolean late, boolean chosen);

        static native TemplateInstance code(String name, boolean wrong);

        static native TemplateInstance setUp(FormState typed);
    }

    private final PersonRegistration register;
    private final CurrentUser user;
    private final Inputs inputs;
    private final SignIns signIns;
    private final DirectSignIn directSignIn;
    private final Schools schools;

    FrontPages(
            PersonRegistration register,
            CurrentUser user,
            Inputs inputs,
            SignIns signIns,
            DirectSignIn directSignIn,
            Schools schools) {
        this.schools = schools;
        this.directSignIn = directSignIn;
        this.register = register;
        this.user = user;
        this.inputs = inputs;
        this.signIns = signIns;
    }

    @GET
    @PermitAll
    public Response door() {
        return Answer.seeOther(
                user.signedIn() ? "/home" : register.schoolIsEmpty() ? "/set-up" : "/sign-in");
    }

    @GET
    @Path("sign-in")
    @PermitAll
    public Response signIn(
            @QueryParam("wrong") @Nullable String wrong,
            @QueryParam("minutes") @Nullable String minutes,
            @QueryParam("late") @Nullable String late,
            @QueryParam("chosen") @Nullable String chosen) {
        return register.schoolIsEmpty()
                ? Answer.seeOther("/set-up")
                : Answer.page(
                        Templates.signIn(
                                wrong != null, minutes(minutes), late != null, chosen != null));
    }

    /** Asks for the code of a second factor. Whether a sign-in waits for it is told by no look. */
    @GET
    @Path("sign-in/code")
    @PermitAll
    public Response code(@QueryParam("wrong") @Nullable String wrong) {
        return Answer.page(Templates.code(SignIns.CODE_NAME, wrong != null));
    }

    /** How long a pause lasts, as the redirect says it; null for none. */
    private static @Nullable Long minutes(@Nullable String said) {
        return said != null && said.matches("\\d{1,2}") ? Long.valueOf(said) : null;
    }

    @POST
    @Path("sign-out")
    @Authenticated
    public Response signOut() {
        signIns.end(user.actor(), user.session());
        user.signOut();
        return Answer.seeOther("/sign-in");
    }

    @GET
    @Path("set-up")
    @PermitAll
    public Response setUp() {
        return register.schoolIsEmpty()
                ? Answer.page(Templates.setUp(FormState.fresh("set-up").with("teaches", true)))
                : Answer.seeOther("/sign-in");
    }

    /** Registrar, and instructor as well where the first person teaches. */
    private static List<String> rolesOfFirst(MultivaluedMap<String, String> form) {
        return "true".equals(form.getFirst("teaches"))
                ? List.of(Role.REGISTRAR_NAME, Role.INSTRUCTOR_NAME)
                : List.of(Role.REGISTRAR_NAME);
    }

    @POST
    @Path("set-up")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @PermitAll
    public Response setUp(MultivaluedMap<String, String> form) {
        form.put("roles", rolesOfFirst(form));
        return Answer.to(
                () -> {
                    var code = form.getFirst("code");
                    var first = inputs.read(form, NewPerson.class);
                    var named = new NewSchoolName(inputs.read(form, FirstSchool.class).school());
                    setUp(code == null ? "" : code, first, named);
                    return "/home";
                },
                problem -> Templates.setUp(FormState.refused("set-up", form, problem)));
    }

    private void setUp(String code, NewPerson first, NewSchoolName named) {
        var registrar = register.setUp(code, first);
        var actor = new Actor(registrar.id(), registrar.roles());
        schools.name(actor, schools.get().version(), named);
        directSignIn.open(registrar);
    }
}
