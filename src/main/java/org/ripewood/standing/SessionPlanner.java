package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Species;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;

/** Plans a class day: who does what on which tree, and what has to be there. */
@ApplicationScoped
class SessionPlanner {

    private final Sessions sessions;
    private final People people;
    private final CourseContent content;
    private final SubjectGatherer gatherer;
    private final WaiverBook waivers;

    SessionPlanner(
            Sessions sessions,
            People people,
            CourseContent content,
            SubjectGatherer gatherer,
            WaiverBook waivers) {
        this.sessions = sessions;
        this.people = people;
        this.content = content;
        this.gatherer = gatherer;
        this.waivers = waivers;
    }

    SessionPlan plan(Actor actor, long sessionId) {
        var session = sessions.get(actor, sessionId);
        people.requireRuns(actor, session.courseId(), "the plan of its sessions");
        var inForce = content.inForce();
        var lesson = lessonOf(inForce, session.lesson());
        var trees = treesOf(session);
        var names = namesOf(session);
        var rows = rows(session, inForce, lesson, trees, names);
        var needs = new SessionNeeds(rows);
        return new SessionPlan(
                session,
                people.getCourse(actor, session.courseId()).name(),
                lesson,
                session.instructorIds().stream().map(id -> nameOf(names, id)).toList(),
                rows,
                needs.tools(),
                needs.materials(),
                needs.cautions(speciesOf(inForce, trees)),
                needs.studentMinutes(),
                needs.instructorMinutes());
    }

    private List<SessionPlan.Row> rows(
            Session session,
            Content inForce,
            @Nullable Lesson lesson,
            Map<Long, TreeOnDay> trees,
            Map<Long, String> names) {
        var planned = new PlannedWork(inForce, lesson);
        var seasonWaived = seasonWaived(trees);
        var rows = new ArrayList<SessionPlan.Row>();
        for (var enrolment : session.enrolments()) {
            var tree = trees.get(enrolment.treeId());
            if (tree == null) {
                continue;
            }
            var choice = planned.choose(tree, seasonWaived);
            rows.add(
                    new SessionPlan.Row(
                            enrolment.bench(),
                            nameOf(names, enrolment.personId()),
                            enrolment.treeId(),
                            tree.tree().label(),
                            inForce.species(tree.tree().species()).common(),
                            choice.technique(),
                            choice.stepId(),
                            choice.why(),
                            choice.measureFirst()));
        }
        return rows;
    }

    private Map<Long, TreeOnDay> treesOf(Session session) {
        var ids = session.enrolments().stream().map(Session.Enrolment::treeId).toList();
        List<Person> students = people.members(session.courseId(), Role.STUDENT);
        return gatherer.many(ids, students, session.heldOn()).stream()
                .collect(Collectors.toMap(tree -> tree.tree().id(), tree -> tree));
    }

    private Map<Long, String> namesOf(Session session) {
        var ids = new HashSet<>(session.instructorIds());
        session.enrolments().forEach(enrolment -> ids.add(enrolment.personId()));
        return people.names(ids);
    }

    private Set<Long> seasonWaived(Map<Long, TreeOnDay> trees) {
        var stepIds =
                trees.values().stream()
                        .flatMap(tree -> tree.open().values().stream())
                        .map(StepEntity::id)
                        .toList();
        return waivers.of(stepIds).stream()
                .filter(waiver -> "season".equals(waiver.reasonKey))
                .map(waiver -> waiver.stepId)
                .collect(Collectors.toSet());
    }

    private static Map<Long, Species> speciesOf(Content content, Map<Long, TreeOnDay> trees) {
        var species = new HashMap<Long, Species>();
        trees.forEach((id, tree) -> species.put(id, content.species(tree.tree().species())));
        return species;
    }

    /** A lesson content has lost since must not keep the class from its plan. */
    private static @Nullable Lesson lessonOf(Content content, @Nullable String code) {
        return code == null ? null : content.lessons().get(code);
    }

    private static String nameOf(Map<Long, String> names, long id) {
        return names.getOrDefault(id, "Person " + id);
    }
}
