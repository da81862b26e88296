package org.ripewood.web.school;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.Assessments;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.people.Courses;
import org.ripewood.people.Courses.Belonging;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.CurrentUser;
import org.ripewood.platform.Role;
import org.ripewood.secondfactor.SecondFactors;
import org.ripewood.sessions.ClassAttended;
import org.ripewood.sessions.Rolls;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.Answer;
import org.ripewood.web.kit.SpeciesNames;

/**
 * A person: what they are at the school and the courses shared with them; and for those who reach
 * the person their trees, open steps, skills and classes as well.
 */
@Path("/people")
@Authenticated
class PersonPages {

    /**
     * What those who reach a person see besides.
     *
     * @param labels of the trees the steps are for, by id
     * @param titles of techniques by code
     * @param species common names by code
     */
    record Known(
            List<Tree> trees,
            Map<Long, String> labels,
            Map<String, String> species,
            List<StepBrief> steps,
            Map<String, String> titles,
            List<Lesson> skills,
            int skillsInAll,
            List<ClassAttended> classes) {}

    /**
     * @param runs ids of courses whose trees the reader may open
     * @param record null for a reader who does not reach the person
     * @param own whether it is the reader
     * @param office whether the reader may block, forget and the like
     * @param secured whether the person has a second factor, as far as the office is concerned
     */
    record PersonSheet(
            Person person,
            List<Belonging> courses,
            Set<Long> runs,
            @Nullable Known record,
            boolean own,
            boolean judges,
            boolean office,
            boolean secured) {

        public boolean runs(Belonging belonging) {
            return office || runs.contains(belonging.course().id());
        }
    }

    @CheckedTemplate
    static class Templates {
        static native TemplateInstance person(PersonSheet sheet);
    }

    private static final int MOST_CLASSES = 8;

    private final CurrentUser user;
    private final People people;
    private final Courses schoolCourses;
    private final Trees trees;
    private final Steps steps;
    private final Assessments assessments;
    private final Rolls rolls;
    private final SecondFactors factors;
    private final CourseContent content;

    PersonPages(
            CurrentUser user,
            People people,
            Courses schoolCourses,
            Trees trees,
            Steps steps,
            Assessments assessments,
            Rolls rolls,
            SecondFactors factors,
            CourseContent content) {
        this.user = user;
        this.people = people;
        this.schoolCourses = schoolCourses;
        this.trees = trees;
        this.steps = steps;
        this.assessments = assessments;
        this.rolls = rolls;
        this.factors = factors;
        this.content = content;
    }

    @GET
    @Path("{id: \\d{1,18}}")
    public Response person(long id) {
        var actor = user.actor();
        var person = people.lookUp(actor, id);
        var office = actor.is(Role.REGISTRAR);
        return Answer.page(
                Templates.person(
                        new PersonSheet(
                                person,
                                schoolCourses.shared(actor, id),
                                taughtBy(actor),
                                people.reaches(actor, id) ? record(actor, id) : null,
                                actor.personId() == id,
                                actor.is(Role.INSTRUCTOR) || office,
                                office,
                                office && !factors.among(actor, List.of(id)).isEmpty())));
    }

    private Set<Long> taughtBy(Actor actor) {
        return actor.is(Role.INSTRUCTOR)
                ? schoolCourses.as(actor, Role.INSTRUCTOR).stream()
                        .map(course -> course.id())
                        .collect(Collectors.toSet())
                : Set.of();
    }

    private Known record(Actor actor, long id) {
        var inForce = content.inForce();
        var own = trees.ofKeepers(actor, List.of(id));
        var shown = assessments.skills(List.of(id)).getOrDefault(id, Set.of());
        var withSkill =
                inForce.lessons().values().stream()
                        .filter(lesson -> lesson.skill() != null)
                        .toList();
        var open = steps.underWay(actor, id);
        return new Known(
                own,
                own.stream().collect(Collectors.toMap(Tree::id, Tree::label)),
                SpeciesNames.of(inForce),
                open,
                open.stream()
                        .map(StepBrief::technique)
                        .distinct()
                        .collect(Collectors.toMap(code -> code, inForce::titleOf)),
                withSkill.stream().filter(lesson -> shown.contains(lesson.code())).toList(),
                withSkill.size(),
                rolls.ofPerson(actor, id).stream().limit(MOST_CLASSES).toList());
    }
}
