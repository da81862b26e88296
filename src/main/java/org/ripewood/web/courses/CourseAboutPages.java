package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Today;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.web.kit.Answer;

/** A course for everybody who belongs to it: when it meets, what is taught, and by whom. */
@Path("/courses/{id: \\d{1,18}}")
@Authenticated
class CourseAboutPages {

    /** A session with its lesson; null when it has none, or the content does not have it. */
    record Dated(Session session, @Nullable Lesson lesson) {}

    /**
     * @param ahead sessions from today on, the soonest first
     * @param past those before, the latest first
     * @param runs whether the reader may open the course's trees
     */
    record AboutSheet(
            Course course,
            List<Person> instructors,
            List<Dated> ahead,
            List<Dated> past,
            boolean runs) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance about(AboutSheet sheet);
    }

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final Sessions sessions;
    private final CourseContent content;
    private final Today today;

    CourseAboutPages(
            CurrentUser user,
            Courses schoolCourses,
            Sessions sessions,
            CourseContent content,
            Today today) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.sessions = sessions;
        this.content = content;
        this.today = today;
    }

    @GET
    @Path("about")
    public Response about(long id) {
        var actor = user.actor();
        var roster = schoolCourses.roster(actor, id);
        var inForce = content.inForce();
        var all =
                sessions.of(actor, roster, roster.course().startsOn()).stream()
                        .map(session -> new Dated(session, lesson(session, inForce)))
                        .toList();
        var ahead =
                all.stream().filter(one -> !one.session().heldOn().isBefore(today.date())).toList();
        var past =
                all.stream()
                        .filter(one -> one.session().heldOn().isBefore(today.date()))
                        .sorted(
                                (one, other) ->
                                        other.session().heldOn().compareTo(one.session().heldOn()))
                        .toList();
        return Answer.page(
                Templates.about(
                        new AboutSheet(
                                roster.course(),
                                roster.instructors(),
                                ahead,
                                past,
                                roster.runs())));
    }

    private static @Nullable Lesson lesson(Session session, Content content) {
        return session.lesson() == null ? null : content.lessons().get(session.lesson());
    }
}
