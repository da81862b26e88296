package org.ripewood.web.courses;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Problem;
import org.ripewood.sessions.ClockChanges;
import org.ripewood.sessions.NewSessions;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.SessionPlanning;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.OnceForms;
import org.ripewood.web.kit.Said;
import org.ripewood.web.kit.TextFormat;

/**
 * Sets sessions of a course: one, or a series whose days are shown before they are set. The form
 * begins as a copy of the course's latest session, or of the one named by {@code like}.
 */
@Path("/courses/{id: \\d{1,18}}/series")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class SeriesPages {

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance series(SeriesPageModel sheet);
    }

    private static final String FORM = "series";
    private static final int DAYS_OF_WEEK = 7;

    private final CurrentUser user;
    private final Courses schoolCourses;
    private final SessionPlanning planning;
    private final CourseContent content;
    private final Inputs inputs;
    private final OnceForms onceForms;
    private final Said said;
    private final Today today;

    SeriesPages(
            CurrentUser user,
            Courses schoolCourses,
            SessionPlanning planning,
            CourseContent content,
            Inputs inputs,
            OnceForms onceForms,
            Said said,
            Today today) {
        this.user = user;
        this.schoolCourses = schoolCourses;
        this.planning = planning;
        this.content = content;
        this.inputs = inputs;
        this.onceForms = onceForms;
        this.said = said;
        this.today = today;
    }

    @GET
    public Response series(long id, @QueryParam("like") @Nullable Long like) {
        schoolCourses.get(user.actor(), id);
        schoolCourses.requireRuns(user.actor(), id, "how its sessions are set");
        var copied = copied(id, like);
        return Answer.page(page(id, copied, copied == null ? blank() : copy(copied), List.of()));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response set(long id, MultivaluedMap<String, String> form) {
        if (daysFirst(form)) {
            return Answer.orAgain(() -> shown(id, form), problem -> refused(id, form, problem));
        }
        return onceForms.to(
                form,
                () -> {
                    var days = inputs.read(form, SeriesForm.class);
                    if (days.days() == null) {
                        form.put(
                                "days", days.proposed().stream().map(LocalDate::toString).toList());
                    }
                    var wanted = inputs.read(form, NewSessions.class);
                    return done(id, planning.setAll(user.actor(), id, wanted));
                },
                problem -> refused(id, form, problem));
    }

    /** Days are shown when that is asked for, and of a series before any of it is set. */
    private static boolean daysFirst(MultivaluedMap<String, String> form) {
        var unit = form.getFirst("unit");
        var series = unit != null && !unit.isBlank();
        return form.getFirst("show") != null || (series && form.get("days") == null);
    }

    private String done(long id, List<Session> set) {
        var first = set.get(0);
        if (set.size() == 1) {
            said.that("The session of %s is set.".formatted(TextFormat.day(first.heldOn())));
            return "/sessions/" + first.id();
        }
        said.that(
                "%d sessions are set, from %s to %s."
                        .formatted(
                                set.size(),
                                TextFormat.day(first.heldOn()),
                                TextFormat.day(set.get(set.size() - 1).heldOn())));
        return "/courses/" + id + "/sessions";
    }

    /** The form with the days of its rule, those on which nothing stands against it chosen. */
    private TemplateInstance shown(long id, MultivaluedMap<String, String> form) {
        var proposed = inputs.read(form, SeriesForm.class).proposed();
        form.put("days", proposed.stream().map(LocalDate::toString).toList());
        var lines = lines(id, form, proposed);
        form.put(
                "days",
                lines.stream()
                        .filter(line -> line.clash() == null)
                        .map(line -> line.day().toString())
                        .toList());
        return page(id, copied(id, like(form)), FormState.of(FORM, form), lines);
    }

    private TemplateInstance refused(
            long id, MultivaluedMap<String, String> form, Problem problem) {
        var typed = FormState.refused(FORM, form, problem);
        var lines = new ArrayList<SeriesPageModel.DayLine>();
        for (var day : form.getOrDefault("days", List.of())) {
            // what is no day is told as a fault of the form
            if (day.matches("\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|1\\d|2[0-8])")) {
                lines.add(new SeriesPageModel.DayLine(LocalDate.parse(day), null, false));
            }
        }
        return page(id, copied(id, like(form)), typed, lines);
    }

    private List<SeriesPageModel.DayLine> lines(
            long id, MultivaluedMap<String, String> form, List<LocalDate> days) {
        var course = schoolCourses.get(user.actor(), id);
        var clashes = planning.clashes(user.actor(), id, inputs.read(form, NewSessions.class));
        var lines = new ArrayList<SeriesPageModel.DayLine>();
        for (int i = 0; i < days.size(); i++) {
            var day = days.get(i);
            var outside = day.isBefore(course.startsOn()) || day.isAfter(course.endsOn());
            lines.add(new SeriesPageModel.DayLine(day, clashes.get(i), outside));
        }
        return lines;
    }

    private @Nullable Session copied(long id, @Nullable Long like) {
        return planning.toCopy(user.actor(), id, like);
    }

    private static @Nullable Long like(MultivaluedMap<String, String> form) {
        var typed = form.getFirst("like");
        return typed != null && typed.matches("\\d{1,18}") ? Long.valueOf(typed) : null;
    }

    private static FormState blank() {
        return FormState.fresh(FORM).with("every", 1).with("times", 1);
    }

    /** A week on from the one copied, or a week from today when that has gone by. */
    private FormState copy(Session like) {
        var next = like.heldOn().plusDays(DAYS_OF_WEEK);
        var soon = today.date().plusDays(1);
        return blank().with(
                        "heldOn", next.isBefore(soon) ? today.date().plusDays(DAYS_OF_WEEK) : next)
                .with("startsAt", like.startsAt())
                .with("endsAt", like.endsAt())
                .with("place", like.place())
                .withIfKnown("places", like.places())
                .withAll("instructorIds", like.instructorIds());
    }

    private TemplateInstance page(
            long id, @Nullable Session like, FormState typed, List<SeriesPageModel.DayLine> lines) {
        var roster = schoolCourses.roster(user.actor(), id);
        return Templates.series(
                new SeriesPageModel(
                        roster.course(),
                        content.inForce().lessons().values(),
                        roster.instructors(),
                        like,
                        lines,
                        lines.isEmpty()
                                ? List.of()
                                : ClockChanges.between(
                                        today.zone(),
                                        lines.get(0).day(),
                                        lines.get(lines.size() - 1).day()),
                        typed));
    }
}
