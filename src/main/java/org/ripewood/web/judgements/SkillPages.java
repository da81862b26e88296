package org.ripewood.web.judgements;

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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.assess.Assessments;
import org.ripewood.assess.NewSkillJudgement;
import org.ripewood.assess.SkillJudgement;
import org.ripewood.boards.LessonFinder;
import org.ripewood.boards.LessonNeed;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.sessions.ClassAttended;
import org.ripewood.sessions.Rolls;
import org.ripewood.trees.TreeDays;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.FormState;

/** What a student has shown, lesson by lesson, and the form for an instructor's word on it. */
@Path("/students/{id: \\d{1,18}}/skills")
@RolesAllowed({Role.INSTRUCTOR_NAME, Role.REGISTRAR_NAME})
class SkillPages {

    record SkillSheet(
            Person student,
            List<SkillJudgement> judgements,
            List<Lesson> lessons,
            Set<String> shown,
            Map<Long, String> names,
            boolean judges,
            List<LessonNeed> next,
            List<ClassAttended> classes,
            FormState typed) {

        public String title(String code) {
            return lessons.stream()
                    .filter(lesson -> lesson.code().equals(code))
                    .map(Lesson::title)
                    .findFirst()
                    .orElse(code);
        }

        public String name(long personId) {
            return names.getOrDefault(personId, "");
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance skills(SkillSheet sheet);
    }

    private final CurrentUser user;
    private final People people;
    private final Assessments assessments;
    private final LessonFinder lessonFinder;
    private final Rolls rolls;
    private final CourseContent content;
    private final Inputs inputs;
    private final TreeDays treeDays;

    SkillPages(
            CurrentUser user,
            People people,
            Assessments assessments,
            LessonFinder lessonFinder,
            Rolls rolls,
            CourseContent content,
            Inputs inputs,
            TreeDays treeDays) {
        this.user = user;
        this.people = people;
        this.assessments = assessments;
        this.lessonFinder = lessonFinder;
        this.rolls = rolls;
        this.content = content;
        this.inputs = inputs;
        this.treeDays = treeDays;
    }

    @GET
    public Response skills(long id) {
        return Answer.page(
                page(
                        id,
                        FormState.fresh("skill").with("judgedOn", treeDays.ofKeepers(Set.of(id)))));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Role.INSTRUCTOR_NAME)
    public Response judge(long id, MultivaluedMap<String, String> form) {
        return Answer.to(
                () -> {
                    assessments.judge(user.actor(), id, inputs.read(form, NewSkillJudgement.class));
                    return "/students/" + id + "/skills";
                },
                problem -> page(id, FormState.refused("skill", form, problem)));
    }

    private TemplateInstance page(long id, FormState typed) {
        var actor = user.actor();
        // asked first: it refuses whoever is out of reach
        var judgements = assessments.of(actor, id);
        return Templates.skills(
                new SkillSheet(
                        people.get(actor, id),
                        judgements,
                        content.inForce().lessons().values().stream()
                                .filter(lesson -> lesson.skill() != null)
                                .toList(),
                        assessments.skills(List.of(id)).getOrDefault(id, Set.of()),
                        people.names(
                                judgements.stream()
                                        .map(SkillJudgement::byId)
                                        .collect(Collectors.toSet())),
                        actor.is(Role.INSTRUCTOR),
                        lessonFinder.ofPerson(actor, id, treeDays.ofKeepers(Set.of(id))),
                        rolls.ofPerson(actor, id),
                        typed));
    }
}
