package org.ripewood.web.school;

import static java.util.stream.Collectors.partitioningBy;
import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.Care;
import org.ripewood.boards.Board;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.HomeTrees;
import org.ripewood.boards.LessonNeed;
import org.ripewood.boards.TreeNext;
import org.ripewood.core.season.CareState;
import org.ripewood.core.season.Span;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.readiness.StylingHeld;
import org.ripewood.sessions.ClassAttended;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.steps.SignOffsWaiting;
import org.ripewood.steps.StepState;
import org.ripewood.steps.Waiting;
import org.ripewood.trees.Tree;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.HeadlineCount;
import org.ripewood.web.kit.Mark;

/** Where everybody starts: what waits for them. */
@Path("/home")
@Authenticated
class HomePages {

    /**
     * A course, with its counts for those who teach it, and whether its page opens to the reader.
     */
    record CourseLine(
            Course course,
            @Nullable Map<Board.Headline, Integer> headlines,
            @Nullable StylingHeld styling,
            boolean opens) {

        public List<HeadlineCount> counts() {
            return headlines == null ? List.of() : HeadlineCount.of(headlines);
        }
    }

    record SessionLine(Session session, Course course) {}

    /** Care after work that nobody has signed off yet. */
    record UnsignedCare(Tree tree, Checklist.Care care) {}

    record Home(
            String name,
            boolean teaches,
            boolean registrar,
            @Nullable Paged<Waiting> waiting,
            List<CourseLine> courses,
            List<Course> past,
            List<SessionLine> sessions,
            Care care,
            List<LessonNeed> lessons,
            List<ClassAttended> classes,
            int ownTrees,
            List<TreeNext> trees) {

        /** A school without any course is offered one to try. */
        public boolean offersSample() {
            return registrar && courses.isEmpty() && past.isEmpty();
        }

        public List<UnsignedCare> unsigned() {
            return trees.stream()
                    .flatMap(
                            line ->
                                    line.care().stream()
                                            .filter(one -> !isTold(line.tree(), one))
                                            .map(one -> new UnsignedCare(line.tree(), one)))
                    .toList();
        }

        /** Once the work stands in the record its care is among the tasks. */
        private boolean isTold(Tree tree, Checklist.Care one) {
            return care.tellsOf(tree.id(), one.afterTitle());
        }

        public int careCount() {
            return care.tasks().size() + unsigned().size();
        }

        public boolean anyCare() {
            return careCount() > 0 || !care.measuring().isEmpty();
        }

        public Mark dueMark() {
            return Mark.of(CareState.DUE);
        }

        public Mark reportedMark() {
            return Mark.of(StepState.REPORTED);
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance home(Home home);
    }

    private static final int DAYS_AHEAD = 7;
    private static final int MOST_COURSES = 12;
    private static final int MOST_SESSIONS = 8;
    private static final int MOST_LESSONS = 5;
    private static final PageRequest FIRST = new PageRequest(0, 20);

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final Sessions sessions;
    private final Rolls rolls;
    private final SignOffsWaiting signOffsWaiting;
    private final HomeTrees homeTrees;
    private final Aftercare aftercare;
    private final Today today;

    HomePages(
            CurrentUser user,
            Courses schoolCourses,
            Sessions sessions,
            Rolls rolls,
            SignOffsWaiting signOffsWaiting,
            HomeTrees homeTrees,
            Aftercare aftercare,
            Today today) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.sessions = sessions;
        this.rolls = rolls;
        this.signOffsWaiting = signOffsWaiting;
        this.homeTrees = homeTrees;
        this.aftercare = aftercare;
        this.today = today;
    }

    @GET
    public Response home() {
        var actor = user.actor();
        var teaches = actor.is(Role.INSTRUCTOR);
        var on = today.date();
        var mine = schoolCourses.own(actor);
        var all =
                mine.stream().map(Courses.Own::course).collect(partitioningBy(one -> one.over(on)));
        var courses = all.getOrDefault(false, List.of()).stream().limit(MOST_COURSES).toList();
        var past = all.getOrDefault(true, List.of()).stream().limit(MOST_COURSES).toList();
        var taught = taught(actor, mine, courses);
        var seen = homeTrees.of(actor, taught);
        return Answer.page(
                Templates.home(
                        new Home(
                                user.name(),
                                teaches,
                                actor.is(Role.REGISTRAR),
                                teaches ? signOffsWaiting.forInstructor(actor, FIRST) : null,
                                lines(actor, courses, taught, seen),
                                past,
                                ahead(courses),
                                aftercare.of(
                                        seen.states(),
                                        new Span(seen.on(), seen.on().plusDays(DAYS_AHEAD - 1))),
                                seen.lessons().stream().limit(MOST_LESSONS).toList(),
                                classes(actor),
                                seen.ownCount(),
                                seen.own())));
    }

    private static Set<Long> taught(Actor actor, List<Courses.Own> mine, List<Course> courses) {
        if (!actor.is(Role.INSTRUCTOR)) {
            return Set.of();
        }
        var shown = courses.stream().map(Course::id).collect(toSet());
        return mine.stream()
                .filter(own -> own.as() == Role.INSTRUCTOR)
                .map(own -> own.course().id())
                .filter(shown::contains)
                .collect(toSet());
    }

    /** Counted are the courses the person teaches; a registrar opens the others from here. */
    private static List<CourseLine> lines(
            Actor actor, List<Course> courses, Set<Long> taught, HomeTrees.Seen seen) {
        return courses.stream()
                .map(
                        course ->
                                new CourseLine(
                                        course,
                                        taught.contains(course.id())
                                                ? seen.headlines()
                                                        .getOrDefault(course.id(), Map.of())
                                                : null,
                                        seen.styling().get(course.id()),
                                        actor.is(Role.REGISTRAR) || taught.contains(course.id())))
                .toList();
    }

    private List<SessionLine> ahead(List<Course> courses) {
        var byId = courses.stream().collect(toMap(Course::id, course -> course));
        return sessions.of(courses, today.date()).stream()
                .flatMap(
                        session ->
                                Stream.ofNullable(byId.get(session.courseId()))
                                        .map(course -> new SessionLine(session, course)))
                .limit(MOST_SESSIONS)
                .toList();
    }

    private List<ClassAttended> classes(Actor actor) {
        return rolls.ofPerson(actor, actor.personId()).stream().limit(MOST_SESSIONS).toList();
    }
}
