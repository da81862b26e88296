package org.ripewood.web.courses;

import static java.util.Objects.requireNonNullElse;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.classday.ClassDays;
import org.ripewood.classday.LessonWeeks;
import org.ripewood.classday.WeeksProgress;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.pictures.WeeksDrawing;
import org.ripewood.pictures.WeeksPicture;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.guards.RateLimited;
import org.ripewood.platform.problems.RecordDays;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.PictureFormat;

/** Which lesson when: how many trees of a course could do each technique, week by week. */
@Path("/courses/{id: \\d{1,18}}/weeks")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class WeeksPages {

    /** Long enough for a course of some hundred trees; beyond that the page tells how far it is. */
    private static final Duration PATIENCE = Duration.ofMillis(1_500);

    record WeeksSheet(Course course, LocalDate from, int weeks, WeeksProgress progress) {

        /** Spans to choose from, in weeks. */
        public List<Integer> spans() {
            return List.of(13, 26, 52, 104);
        }

        /** Techniques some tree could do within the span, the one most trees could do first. */
        public List<LessonWeeks.Row> possible() {
            return rows().stream()
                    .filter(row -> row.best() != null)
                    .sorted(Comparator.comparingInt(LessonWeeks.Row::most).reversed())
                    .toList();
        }

        /** The weeks of all possible techniques; null when there are none. */
        public @Nullable PictureFormat picture() {
            var rows = possible();
            if (rows.isEmpty()) {
                return null;
            }
            var drawing =
                    new WeeksDrawing(
                            course.name(),
                            from,
                            progress.trees(),
                            rows.stream().map(WeeksSheet::drawn).toList());
            return PictureFormat.of(sheet -> WeeksPicture.of(drawing, sheet));
        }

        private static WeeksDrawing.Row drawn(LessonWeeks.Row row) {
            return new WeeksDrawing.Row(
                    row.technique().title(),
                    row.weeks().stream()
                            .map(
                                    week ->
                                            new WeeksDrawing.Week(
                                                    week.possible(), week.likely(), week.sure()))
                            .toList());
        }

        /** Techniques of which nobody can say for any tree. */
        public List<LessonWeeks.Row> unsaid() {
            return rows().stream().filter(row -> row.best() == null).toList();
        }

        private List<LessonWeeks.Row> rows() {
            var through = progress.through();
            return through == null ? List.of() : through.rows();
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance weeks(WeeksSheet sheet);
    }

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final ClassDays days;
    private final TreeDays treeDays;

    WeeksPages(CurrentUser user, Courses schoolCourses, ClassDays days, TreeDays treeDays) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.days = days;
        this.treeDays = treeDays;
    }

    @GET
    @RateLimited
    public Response weeks(
            long id,
            @QueryParam("from") @Nullable LocalDate from,
            @QueryParam("weeks") @DefaultValue("26") int weeks) {
        var actor = user.actor();
        var first = requireNonNullElse(RecordDays.asked("from", from), treeDays.ofCourse(id));
        return Answer.page(
                Templates.weeks(
                        new WeeksSheet(
                                schoolCourses.get(actor, id),
                                first,
                                weeks,
                                days.weeksAhead(actor, id, first, weeks, PATIENCE))));
    }
}
