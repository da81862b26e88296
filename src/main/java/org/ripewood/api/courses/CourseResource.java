package org.ripewood.api.courses;

import static org.ripewood.platform.Role.INSTRUCTOR_NAME;
import static org.ripewood.platform.Role.REGISTRAR_NAME;
import static org.ripewood.platform.Role.STUDENT_NAME;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;
import org.jspecify.annotations.Nullable;
import org.ripewood.api.kit.Answers;
import org.ripewood.api.kit.Asked;
import org.ripewood.boards.Board;
import org.ripewood.boards.BoardAsked;
import org.ripewood.boards.BoardMaker;
import org.ripewood.boards.LessonFinder;
import org.ripewood.boards.LessonNeed;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewRun;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.readiness.ReadinessAsked;
import org.ripewood.readiness.ReadinessMaker;
import org.ripewood.readiness.ReadinessSheet;
import org.ripewood.trees.TreeDays;

/** CourseRows, who belongs to them, and how their trees stand. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "CourseRows")
class CourseResource {

    private final Courses schoolCourses;
    private final BoardMaker boardMaker;
    private final ReadinessMaker readinessMaker;
    private final LessonFinder lessonFinder;
    private final CurrentUser user;
    private final Inputs inputs;
    private final Today today;
    private final TreeDays treeDays;

    CourseResource(
            Courses schoolCourses,
            BoardMaker boardMaker,
            ReadinessMaker readinessMaker,
            LessonFinder lessonFinder,
            CurrentUser user,
            Inputs inputs,
            Today today,
            TreeDays treeDays) {
        this.schoolCourses = schoolCourses;
        this.boardMaker = boardMaker;
        this.readinessMaker = readinessMaker;
        this.lessonFinder = lessonFinder;
        this.user = user;
        this.inputs = inputs;
        this.today = today;
        this.treeDays = treeDays;
    }

    @GET
    @Path("courses")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Courses within reach, newest first")
    public List<Course> list() {
        return schoolCourses.list(user.actor());
    }

    @POST
    @Path("courses")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Open a course")
    @APIResponseSchema(value = Course.class, responseCode = "201", responseDescription = "Opened")
    public RestResponse<Course> open(@Nullable NewCourse course) {
        var opened = schoolCourses.open(user.actor(), inputs.check(course));
        return Answers.created("courses/" + opened.id(), opened.version(), opened);
    }

    @GET
    @Path("courses/{id}")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "A course, with its version as ETag")
    public RestResponse<Course> get(@PathParam("id") long id) {
        var course = schoolCourses.get(user.actor(), id);
        return Answers.versioned(course.version(), course);
    }

    @GET
    @Path("courses/{id}/board")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "The course's trees at a glance, and what needs a look",
            description =
                    "The filters narrow the rows; counts, evidence growing old, reports waiting and"
                            + " students not seen are of the whole course.")
    public Board board(
            @PathParam("id") long id,
            @QueryParam("on") @Nullable String on,
            @QueryParam("headline") @Nullable String headline,
            @QueryParam("reason") @Nullable String reason,
            @QueryParam("fact") @Nullable String fact,
            @QueryParam("species") @Nullable String species,
            @QueryParam("student") @Nullable String student,
            @QueryParam("stage") @Nullable String stage,
            @QueryParam("withinWeeks") @Nullable String withinWeeks,
            @QueryParam("unseenWeeks") @Nullable String unseenWeeks,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        return boardMaker.make(
                user.actor(),
                id,
                Asked.day("on", on, treeDays.ofCourse(id)),
                new BoardAsked(
                        Asked.oneOf("headline", headline, Board.Headline.class),
                        reason,
                        fact,
                        species,
                        Asked.id("student", student),
                        stage,
                        Asked.whole("withinWeeks", withinWeeks, BoardAsked.WITHIN_WEEKS),
                        Asked.whole("unseenWeeks", unseenWeeks, BoardAsked.UNSEEN_WEEKS)),
                Asked.page(page, size));
    }

    @GET
    @Path("courses/{id}/readiness")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(
            summary = "What each tree of the course is held from, by what and until when",
            description =
                    "A row a tree, a cell for each group of work. The filters narrow the rows; all"
                            + " counts are of the whole course.")
    public ReadinessSheet readiness(
            @PathParam("id") long id,
            @QueryParam("on") @Nullable String on,
            @QueryParam("heldFrom") @Nullable String heldFrom,
            @QueryParam("reason") @Nullable String reason,
            @QueryParam("freeSoon") @Nullable String freeSoon,
            @QueryParam("student") @Nullable String student,
            @QueryParam("stage") @Nullable String stage,
            @QueryParam("species") @Nullable String species,
            @QueryParam("sort") @Nullable String sort,
            @QueryParam("page") @Nullable String page,
            @QueryParam("size") @Nullable String size) {
        var order = Asked.oneOf("sort", sort, ReadinessAsked.Sort.class);
        return readinessMaker.make(
                user.actor(),
                id,
                Asked.day("on", on, treeDays.ofCourse(id)),
                new ReadinessAsked(
                        heldFrom,
                        reason,
                        Asked.yes("freeSoon", freeSoon),
                        Asked.id("student", student),
                        stage,
                        species,
                        order == null ? ReadinessAsked.Sort.HELD : order),
                Asked.page(page, size));
    }

    @GET
    @Path("courses/{id}/lessons-next")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Lessons the course's trees wait for, the one that frees most first")
    public List<LessonNeed> lessonsNext(@PathParam("id") long id) {
        return lessonFinder.ofCourse(user.actor(), id, treeDays.ofCourse(id));
    }

    @GET
    @Path("people/{id}/lessons-next")
    @RolesAllowed({STUDENT_NAME, INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Lessons a student's trees wait for, the one that frees most first")
    public List<LessonNeed> lessonsNextOfPerson(@PathParam("id") long id) {
        return lessonFinder.ofPerson(user.actor(), id, treeDays.ofKeepers(Set.of(id)));
    }

    @GET
    @Path("courses/{id}/members")
    @RolesAllowed({INSTRUCTOR_NAME, REGISTRAR_NAME})
    @Operation(summary = "Who teaches the course, who attends it, and who left it")
    public MembersAnswer members(@PathParam("id") long id) {
        return MembersAnswer.of(schoolCourses.memberships(user.actor(), id));
    }

    @POST
    @Path("courses/{id}/members")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Add a person to the course, from today unless a day gone by is said")
    @APIResponseSchema(
            value = MembersAnswer.class,
            responseCode = "201",
            responseDescription = "Added")
    public RestResponse<MembersAnswer> join(@PathParam("id") long id, @Nullable NewMember member) {
        var joining = inputs.check(member);
        var since = joining.since() == null ? today.date() : joining.since();
        schoolCourses.join(user.actor(), id, joining.personId(), joining.as(), since);
        return Answers.created("courses/" + id + "/members", members(id));
    }

    @DELETE
    @Path("courses/{id}/members/{person}")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(
            summary = "End a membership, as of today unless a day gone by is said",
            description = "That the person belonged to the course is kept.")
    public MembersAnswer leave(
            @PathParam("id") long id,
            @PathParam("person") long personId,
            @QueryParam("on") @Nullable String on) {
        schoolCourses.leave(user.actor(), id, personId, Asked.day("on", on, today.date()));
        return members(id);
    }

    @POST
    @Path("courses/{id}/runs")
    @RolesAllowed(REGISTRAR_NAME)
    @Operation(summary = "Open the course anew with its instructors, and its students if wanted")
    @APIResponseSchema(value = Course.class, responseCode = "201", responseDescription = "Opened")
    public RestResponse<Course> runAgain(@PathParam("id") long id, @Nullable NewRun run) {
        var opened = schoolCourses.runAgain(user.actor(), id, inputs.check(run));
        return Answers.created("courses/" + opened.id(), opened.version(), opened);
    }
}
