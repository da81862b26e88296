package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.platform.CsvText;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.readiness.ReadinessMaker;
import org.ripewood.readiness.ReadinessQuery;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** A course's first page: which trees are held from what, by what, until when. */
@Path("/courses/{id: \\d{1,18}}")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CoursePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance course(ReadinessPageModel page);
    }

    /** What only the page of next steps asks for, and stood here before. */
    private static final List<String> OF_NEXT_STEPS =
            List.of("headline", "fact", "withinWeeks", "unseenWeeks");

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final ReadinessMaker maker;
    private final Inputs inputs;
    private final TreeDays treeDays;

    CoursePages(
            CurrentUser user,
            Courses schoolCourses,
            ReadinessMaker maker,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.maker = maker;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    public Response course(long id, @Context UriInfo uri) {
        var asked = uri.getQueryParameters();
        if (OF_NEXT_STEPS.stream().anyMatch(asked::containsKey)) {
            return toNextSteps(id, asked);
        }
        return Answer.orAgain(
                () -> page(id, inputs.read(asked, ReadinessQuery.class), form(asked)),
                problem ->
                        page(
                                id,
                                ReadinessQuery.ALL,
                                FormState.refused("readiness", asked, problem)));
    }

    private static Response toNextSteps(long id, MultivaluedMap<String, String> asked) {
        var query = FormState.of("board", asked).query(BoardFilter.FIELDS);
        return Answer.seeOther("/courses/%d/next?page=0%s".formatted(id, query));
    }

    @GET
    @Path("readiness.csv")
    public Response file(long id, @Context UriInfo uri) {
        var form = inputs.read(uri.getQueryParameters(), ReadinessQuery.class);
        var sheet = maker.whole(user.actor(), id, treeDays.ofCourse(id), form.asked());
        return Response.ok(ReadinessFile.of(sheet))
                .type(CsvText.MEDIA_TYPE)
                .header("Cache-Control", "no-store")
                .header(
                        "Content-Disposition",
                        CsvText.attachment("course-%d-readiness-%s.csv".formatted(id, sheet.on())))
                .build();
    }

    private static FormState form(MultivaluedMap<String, String> asked) {
        return FormState.of("readiness", asked);
    }

    private TemplateInstance page(long id, ReadinessQuery form, FormState typed) {
        var roster = schoolCourses.roster(user.actor(), id);
        var day = treeDays.ofKeepers(roster.students().stream().map(Person::id).toList());
        var sheet = maker.make(roster, day, form.asked(), form.rows());
        return Templates.course(
                new ReadinessPageModel(
                        roster.course(),
                        roster.instructors(),
                        roster.students(),
                        sheet,
                        form.asked(),
                        typed));
    }
}
