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
import org.ripewood.people.People;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.school.NewSchoolName;
import org.ripewood.school.Schools;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/** What the school is called, to be changed by a registrar. */
@Path("/school")
@RolesAllowed(Role.REGISTRAR_NAME)
class SchoolPages {

    /** The version of the name that was seen. */
    record Seen(@NotNull Long version) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance school(FormState typed);
    }

    private static final String FORM = "school";

    private final CurrentUser user;
    private final Schools school;
    private final People people;
    private final Inputs inputs;
    private final EditConflicts clashes;

    SchoolPages(
            CurrentUser user, Schools school, People people, Inputs inputs, EditConflicts clashes) {
        this.user = user;
        this.school = school;
        this.people = people;
        this.inputs = inputs;
        this.clashes = clashes;
    }

    @GET
    public Response school() {
        return Answer.page(Templates.school(described()));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response name(MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    var version = inputs.read(form, Seen.class).version();
                    var wanted = inputs.read(form, NewSchoolName.class);
                    school.name(user.actor(), version, wanted);
                    return "/people";
                },
                problem -> again(FormState.refused(FORM, form, problem)));
    }

    private TemplateInstance again(FormState typed) {
        var label = Label.of("name", "Name of the school");
        var about = new EditConflicts.About("school", 1, List.of(label), people::names);
        return Templates.school(clashes.mend(typed, described(), about));
    }

    private FormState described() {
        var now = school.get();
        return FormState.fresh(FORM).with("version", now.version()).with("name", now.name());
    }
}
