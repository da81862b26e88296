package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.function.Function;
import org.ripewood.boards.BoardMaker;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.platform.CsvText;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** What comes next on a course's trees, what is to be looked at again, and whom to look after. */
@Path("/courses/{id: \\d{1,18}}")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CourseBoardPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance next(CoursePageModel sheet);

        static native TemplateInstance again(CoursePageModel sheet);

        static native TemplateInstance people(CoursePageModel sheet);
    }

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final BoardMaker boardMaker;
    private final CourseContent content;
    private final Inputs inputs;
    private final TreeDays treeDays;

    CourseBoardPages(
            CurrentUser user,
            Courses schoolCourses,
            BoardMaker boardMaker,
            CourseContent content,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.boardMaker = boardMaker;
        this.content = content;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    @Path("next")
    public Response next(long id, @Context UriInfo uri) {
        return answer(id, uri, Templates::next);
    }

    @GET
    @Path("again")
    public Response again(long id, @Context UriInfo uri) {
        return answer(id, uri, Templates::again);
    }

    @GET
    @Path("people")
    public Response people(long id, @Context UriInfo uri) {
        return answer(id, uri, Templates::people);
    }

    private Response answer(
            long id, UriInfo uri, Function<CoursePageModel, TemplateInstance> page) {
        var asked = uri.getQueryParameters();
        return Answer.orAgain(
                () ->
                        page.apply(
                                model(
                                        id,
                                        inputs.read(asked, BoardFilter.class),
                                        FormState.of("board", asked))),
                problem ->
                        page.apply(
                                model(
                                        id,
                                        BoardFilter.ALL,
                                        FormState.refused("board", asked, problem))));
    }

    @GET
    @Path("board.csv")
    public Response file(long id, @Context UriInfo uri) {
        var filter = inputs.read(uri.getQueryParameters(), BoardFilter.class);
        var board = boardMaker.whole(user.actor(), id, treeDays.ofCourse(id), filter.asked());
        return Response.ok(BoardFile.of(board))
                .type(CsvText.MEDIA_TYPE)
                .header("Cache-Control", "no-store")
                .header(
                        "Content-Disposition",
                        CsvText.attachment("course-%d-board-%s.csv".formatted(id, board.on())))
                .build();
    }

    private CoursePageModel model(long id, BoardFilter filter, FormState typed) {
        var roster = schoolCourses.roster(user.actor(), id);
        var board =
                boardMaker.make(
                        roster,
                        treeDays.ofKeepers(roster.students().stream().map(Person::id).toList()),
                        filter.asked(),
                        filter.rows());
        return new CoursePageModel(
                roster.course(),
                board,
                filter.asked(),
                typed,
                content.inForce(),
                roster.instructors(),
                roster.students());
    }
}
