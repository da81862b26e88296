package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.ripewood.boards.BoardMaker;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.platform.CsvText;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** A course's board: every tree at a glance, what holds them, who needs a look, the class dates. */
@Path("/courses/{id: \\d{1,18}}")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CoursePages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance course(CoursePageModel sheet);
    }

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final Sessions sessions;
    private final BoardMaker boardMaker;
    private final CourseContent content;
    private final Inputs inputs;
    private final TreeDays treeDays;

    CoursePages(
            CurrentUser user,
            Courses schoolCourses,
            Sessions sessions,
            BoardMaker boardMaker,
            CourseContent content,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.sessions = sessions;
        this.boardMaker = boardMaker;
        this.content = content;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    public Response course(long id, @Context UriInfo uri) {
        var asked = uri.getQueryParameters();
        var fresh = FormState.fresh("session");
        return Answer.orAgain(
                () -> page(id, inputs.read(asked, BoardFilter.class), filter(asked), fresh),
                problem ->
                        page(
                                id,
                                BoardFilter.ALL,
                                FormState.refused("board", asked, problem),
                                fresh));
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

    @POST
    @Path("sessions")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response setSession(long id, MultivaluedMap<String, String> form) {
        // the path says which course
        form.putSingle("courseId", Long.toString(id));
        return Answer.to(
                () -> {
                    var set = sessions.set(user.actor(), inputs.read(form, NewSession.class));
                    return "/sessions/" + set.id();
                },
                problem ->
                        page(
                                id,
                                BoardFilter.ALL,
                                FormState.fresh("board"),
                                FormState.refused("session", form, problem)));
    }

    private static FormState filter(MultivaluedMap<String, String> asked) {
        return FormState.of("board", asked);
    }

    private TemplateInstance page(long id, BoardFilter filter, FormState asked, FormState typed) {
        var actor = user.actor();
        var roster = schoolCourses.roster(actor, id);
        var board =
                boardMaker.make(
                        roster,
                        treeDays.ofKeepers(roster.students().stream().map(Person::id).toList()),
                        filter.asked(),
                        filter.rows());
        return Templates.course(
                new CoursePageModel(
                        roster.course(),
                        board,
                        filter.asked(),
                        asked,
                        content.inForce(),
                        sessions.of(actor, roster, board.on()),
                        roster.instructors(),
                        roster.students(),
                        typed));
    }
}
