package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.validation.constraints.NotNull;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.ripewood.accounts.NewRoles;
import org.ripewood.accounts.PersonRoles;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.ConfirmForms;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/** What a person is at the school, to be changed by a registrar. */
@Path("/people/{id: \\d{1,18}}/roles")
@RolesAllowed(Role.REGISTRAR_NAME)
class RolePages {

    /** The version of the person that was seen. */
    record Seen(@NotNull Long version) {}

    /** A role and what it lets a person do. */
    record Offered(Role role, String lets) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance roles(Person person, List<Offered> offered, FormState typed);
    }

    private static final String FORM = "roles";

    private static final List<Offered> OFFERED =
            List.of(
                    new Offered(Role.STUDENT, "keeps trees, reports work, attends courses"),
                    new Offered(
                            Role.INSTRUCTOR,
                            "teaches courses, assigns steps, signs off, enters sites"),
                    new Offered(
                            Role.REGISTRAR,
                            "invites people, gives roles, opens courses, sees everything"));

    private final CurrentUser user;
    private final People people;
    private final PersonRoles roles;
    private final Inputs inputs;
    private final ConfirmForms confirming;
    private final EditConflicts clashes;

    RolePages(
            CurrentUser user,
            People people,
            PersonRoles roles,
            Inputs inputs,
            ConfirmForms confirming,
            EditConflicts clashes) {
        this.user = user;
        this.people = people;
        this.roles = roles;
        this.inputs = inputs;
        this.confirming = confirming;
        this.clashes = clashes;
    }

    @GET
    public Response ask(long id) {
        var person = roles.get(user.actor(), id);
        return Answer.page(Templates.roles(person, OFFERED, described(person)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(long id, MultivaluedMap<String, String> form) {
        return confirming.first(
                form,
                () ->
                        Answer.to(
                                () -> {
                                    var version = inputs.read(form, Seen.class).version();
                                    var wanted = inputs.read(form, NewRoles.class).roles();
                                    roles.set(user.actor(), id, version, wanted);
                                    return pageAfter(id, wanted);
                                },
                                problem -> again(id, FormState.refused(FORM, form, problem))));
    }

    /** The list of people, unless it is no longer theirs to see. */
    private String pageAfter(long id, Set<Role> now) {
        var own = user.actor().personId() == id;
        return own && !now.contains(Role.REGISTRAR) ? "/home" : "/people#everybody";
    }

    private TemplateInstance again(long id, FormState typed) {
        var person = roles.get(user.actor(), id);
        var label = new Label("roles", "Role", words -> words.toLowerCase(Locale.ROOT));
        var about = new EditConflicts.About("person", id, List.of(label), people::names);
        return Templates.roles(person, OFFERED, clashes.mend(typed, described(person), about));
    }

    private static FormState described(Person person) {
        return FormState.fresh(FORM)
                .with("version", person.version())
                .withAll("roles", person.roles().stream().sorted().toList());
    }
}
