package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Collection;
import java.util.List;
import org.ripewood.boards.LessonFinder;
import org.ripewood.boards.LessonNeed;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.NewSession;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** A course's sessions ahead, a form for a new one, and the lessons its trees wait for. */
@Path("/courses/{id: \\d{1,18}}/sessions")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class CourseSessionsPages {

    /**
     * What the page shows.
     *
     * @param needs lessons the trees wait for
     * @param typed the form of a new session
     */
    record SessionsOfCourse(
            Course course,
            List<Person> instructors,
            List<Session> sessions,
            List<LessonNeed> needs,
            Collection<Lesson> lessons,
            FormState typed) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance sessions(SessionsOfCourse sheet);
    }

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final Sessions sessions;
    private final LessonFinder lessonFinder;
    private final CourseContent content;
    private final Inputs inputs;
    private final TreeDays treeDays;

    CourseSessionsPages(
            CurrentUser user,
            Courses schoolCourses,
            Sessions sessions,
            LessonFinder lessonFinder,
            CourseContent content,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.sessions = sessions;
        this.lessonFinder = lessonFinder;
        this.content = content;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    public Response sessions(long id) {
        // who sets a session mostly teaches it
        var fresh = FormState.fresh("session").with("instructorIds", user.actor().personId());
        return Answer.page(page(id, fresh));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response setSession(long id, MultivaluedMap<String, String> form) {
        // the path says which course
        form.putSingle("courseId", Long.toString(id));
        return Answer.to(
                () -> {
                    var set = sessions.set(user.actor(), inputs.read(form, NewSession.class));
                    return "/sessions/" + set.id();
                },
                problem -> page(id, FormState.refused("session", form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var actor = user.actor();
        var roster = schoolCourses.roster(actor, id);
        roster.requireRuns("its sessions as those who run it do");
        var on = treeDays.ofKeepers(roster.students().stream().map(Person::id).toList());
        return Templates.sessions(
                new SessionsOfCourse(
                        roster.course(),
                        roster.instructors(),
                        sessions.of(actor, roster, on),
                        lessonFinder.ofCourse(actor, id, on),
                        content.inForce().lessons().values(),
                        typed));
    }
}
