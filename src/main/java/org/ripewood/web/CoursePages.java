package org.ripewood.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.people.Course;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Inputs;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.Board;
import org.ripewood.standing.Board.Headline;
import org.ripewood.standing.Standings;

/** A course's board: every tree at a glance, what holds them, the class dates. */
@Path("/courses/{id: \\d{1,18}}")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CoursePages {

    record CourseSheet(
            Course course,
            Board board,
            @Nullable Headline headline,
            Map<String, String> speciesNames,
            List<Session> sessions,
            List<Person> instructors,
            List<Person> students,
            Collection<Lesson> lessons,
            Typed typed) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance course(CourseSheet sheet);
    }

    private static final int ROWS = 25;

    private final CurrentUser user;
    private final People people;
    private final Sessions sessions;
    private final Standings standings;
    private final CourseContent content;
    private final Inputs inputs;
    private final Today today;

    CoursePages(
            CurrentUser user,
            People people,
            Sessions sessions,
            Standings standings,
            CourseContent content,
            Inputs inputs,
            Today today) {
        this.user = user;
        this.people = people;
        this.sessions = sessions;
        this.standings = standings;
        this.content = content;
        this.inputs = inputs;
        this.today = today;
    }

    @GET
    public Response course(
            long id,
            @QueryParam("headline") @Nullable Headline headline,
            @QueryParam("page") @DefaultValue("0") int page) {
        return Answer.page(Templates.course(sheet(id, headline, page, Typed.fresh("session"))));
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
                        Templates.course(
                                sheet(id, null, 0, Typed.refused("session", form, problem))));
    }

    private CourseSheet sheet(long id, @Nullable Headline headline, int page, Typed typed) {
        var actor = user.actor();
        var course = people.getCourse(actor, id);
        var board = standings.board(actor, id, today.date(), headline, new PageRequest(page, ROWS));
        return new CourseSheet(
                course,
                board,
                headline,
                SpeciesNames.of(content.inForce()),
                sessions.ofCourse(actor, id, today.date()),
                people.members(id, Role.INSTRUCTOR),
                people.members(id, Role.STUDENT),
                content.inForce().lessons().values(),
                typed);
    }
}
