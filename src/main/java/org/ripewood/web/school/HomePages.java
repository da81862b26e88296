package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.aftercare.Aftercare;
import org.ripewood.aftercare.Care;
import org.ripewood.boards.Board;
import org.ripewood.boards.BoardAsked;
import org.ripewood.boards.BoardMaker;
import org.ripewood.boards.Checklist;
import org.ripewood.boards.ChecklistMaker;
import org.ripewood.boards.LessonFinder;
import org.ripewood.boards.LessonNeed;
import org.ripewood.core.season.Span;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.sessions.ClassAttended;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.steps.SignOffsWaiting;
import org.ripewood.steps.Waiting;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;

/** Where everybody starts: what waits for them. */
@Path("/home")
@Authenticated
class HomePages {

    /**
     * A course, with its counts for those who teach it, and whether its page opens to the reader.
     */
    record CourseLine(Course course, @Nullable Board board, boolean opens) {}

    record SessionLine(Session session, Course course) {}

    record TreeLine(Tree tree, String species, Checklist checklist) {}

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
            Paged<Tree> ownTrees,
            List<TreeLine> trees) {}

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance home(Home home);
    }

    private static final int DAYS_AHEAD = 7;
    private static final int MOST_COURSES = 12;
    private static final int MOST_SESSIONS = 8;
    private static final int MOST_LESSONS = 5;
    private static final PageRequest FIRST = new PageRequest(0, 20);
    private static final PageRequest COUNTS_ONLY = new PageRequest(0, 1);

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final People people;
    private final Trees trees;
    private final Sessions sessions;
    private final Rolls rolls;
    private final SignOffsWaiting signOffsWaiting;
    private final BoardMaker boardMaker;
    private final LessonFinder lessonFinder;
    private final ChecklistMaker checklistMaker;
    private final Aftercare aftercare;
    private final CourseContent content;
    private final Today today;

    HomePages(
            CurrentUser user,
            Courses schoolCourses,
            People people,
            Trees trees,
            Sessions sessions,
            Rolls rolls,
            SignOffsWaiting signOffsWaiting,
            BoardMaker boardMaker,
            LessonFinder lessonFinder,
            ChecklistMaker checklistMaker,
            Aftercare aftercare,
            CourseContent content,
            Today today) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.people = people;
        this.trees = trees;
        this.sessions = sessions;
        this.rolls = rolls;
        this.signOffsWaiting = signOffsWaiting;
        this.boardMaker = boardMaker;
        this.lessonFinder = lessonFinder;
        this.checklistMaker = checklistMaker;
        this.aftercare = aftercare;
        this.content = content;
        this.today = today;
    }

    @GET
    public Response home() {
        var actor = user.actor();
        var teaches = actor.is(Role.INSTRUCTOR);
        var all =
                schoolCourses.list(actor).stream()
                        .collect(Collectors.partitioningBy(one -> one.over(today.date())));
        var courses = all.getOrDefault(false, List.of()).stream().limit(MOST_COURSES).toList();
        var past = all.getOrDefault(true, List.of()).stream().limit(MOST_COURSES).toList();
        var own = trees.list(actor, actor.personId(), null, FIRST);
        return Answer.page(
                Templates.home(
                        new Home(
                                people.name(actor.personId()),
                                teaches,
                                actor.is(Role.REGISTRAR),
                                teaches ? signOffsWaiting.forInstructor(actor, FIRST) : null,
                                lines(actor, courses),
                                past,
                                ahead(actor, courses),
                                thisWeek(actor),
                                lessons(actor),
                                classes(actor),
                                own,
                                own.items().stream().map(tree -> line(actor, tree)).toList())));
    }

    /** Counted are the courses the person teaches; a registrar opens the others from here. */
    private List<CourseLine> lines(Actor actor, List<Course> courses) {
        var taught =
                schoolCourses.as(actor, Role.INSTRUCTOR).stream()
                        .map(Course::id)
                        .collect(Collectors.toSet());
        return courses.stream()
                .map(
                        course ->
                                new CourseLine(
                                        course,
                                        taught.contains(course.id())
                                                ? boardMaker.make(
                                                        actor,
                                                        course.id(),
                                                        today.date(),
                                                        BoardAsked.of(null),
                                                        COUNTS_ONLY)
                                                : null,
                                        actor.is(Role.REGISTRAR) || taught.contains(course.id())))
                .toList();
    }

    private List<SessionLine> ahead(Actor actor, List<Course> courses) {
        return courses.stream()
                .flatMap(course -> ahead(actor, course))
                .sorted(
                        Comparator.comparing((SessionLine line) -> line.session().heldOn())
                                .thenComparing(line -> line.session().startsAt()))
                .limit(MOST_SESSIONS)
                .toList();
    }

    private Stream<SessionLine> ahead(Actor actor, Course course) {
        return sessions.ofCourse(actor, course.id(), today.date()).stream()
                .map(session -> new SessionLine(session, course));
    }

    private Care thisWeek(Actor actor) {
        var on = today.date();
        return aftercare.ofKeeper(
                actor, actor.personId(), new Span(on, on.plusDays(DAYS_AHEAD - 1)));
    }

    /** Only students have skills to show. */
    private List<LessonNeed> lessons(Actor actor) {
        return actor.is(Role.STUDENT)
                ? lessonFinder.ofPerson(actor, actor.personId(), today.date()).stream()
                        .limit(MOST_LESSONS)
                        .toList()
                : List.of();
    }

    private List<ClassAttended> classes(Actor actor) {
        return rolls.ofPerson(actor, actor.personId()).stream().limit(MOST_SESSIONS).toList();
    }

    private TreeLine line(Actor actor, Tree tree) {
        return new TreeLine(
                tree,
                content.inForce().species(tree.species()).common(),
                checklistMaker.make(actor, tree.id(), today.date()));
    }
}
