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
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sample.SampleCourses;
import org.ripewood.sample.SampleSheet;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;

/** A made-up course to try the service with: added by one button, thrown away by another. */
@Path("/sample-course")
@RolesAllowed(Role.REGISTRAR_NAME)
class SamplePages {

    /** The sample that was seen. */
    record Seen(@NotNull Long course) {}

    /**
     * @param sample null while there is none
     * @param teaches whether the reader may add one
     */
    record SamplePage(@Nullable SampleSheet sample, boolean teaches, FormState typed) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sample(SamplePage page);
    }

    private static final String FORM = "sample";

    private final CurrentUser user;
    private final SampleCourses samples;
    private final Inputs inputs;
    private final OnceForms once;
    private final Said said;

    SamplePages(CurrentUser user, SampleCourses samples, Inputs inputs, OnceForms once, Said said) {
        this.once = once;
        this.user = user;
        this.samples = samples;
        this.inputs = inputs;
        this.said = said;
    }

    @GET
    public Response sample() {
        return Answer.page(page(FormState.fresh(FORM)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response add(MultivaluedMap<String, String> form) {
        return once.to(
                form,
                () -> {
                    var course = samples.add(user.actor());
                    said.that("The sample course is added. All of it is made up.");
                    return "/courses/" + course;
                },
                problem -> page(FormState.refused(FORM, form, problem)));
    }

    @POST
    @Path("throw-away")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response throwAway(MultivaluedMap<String, String> form) {
        return once.to(
                form,
                () -> {
                    samples.throwAway(user.actor(), inputs.read(form, Seen.class).course());
                    said.that("The sample course is thrown away, and all that belonged to it.");
                    return "/home";
                },
                problem -> page(FormState.refused(FORM, form, problem)));
    }

    private TemplateInstance page(FormState typed) {
        var actor = user.actor();
        return Templates.sample(
                new SamplePage(samples.get(actor).orElse(null), actor.is(Role.INSTRUCTOR), typed));
    }
}
