package org.ripewood.classday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.Content;
import org.ripewood.course.CourseContent;
import org.ripewood.course.Lesson;
import org.ripewood.course.Species;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.standing.DayWork;
import org.ripewood.standing.Standings;

/** Plans a class day: who does what on which tree, and what has to be there. */
@ApplicationScoped
class SessionPlanner {

    private final Sessions sessions;
    private final People people;
    private final CourseContent content;
    private final Standings standings;

    SessionPlanner(Sessions sessions, People people, CourseContent content, Standings standings) {
        this.sessions = sessions;
        this.people = people;
        this.content = content;
        this.standings = standings;
    }

    SessionPlan plan(Actor actor, long sessionId) {
        var session = sessions.get(actor, sessionId);
        people.requireRuns(actor, session.courseId(), "the plan of its sessions");
        var inForce = content.inForce();
        var lesson = lessonOf(inForce, session.lesson());
        var work = workOf(actor, session);
        var names = namesOf(session);
        var rows = rows(session, inForce, lesson, work, names);
        var needs = new SessionNeeds(rows);
        return new SessionPlan(
                session,
                people.getCourse(actor, session.courseId()).name(),
                lesson,
                session.instructorIds().stream().map(id -> nameOf(names, id)).toList(),
                rows,
                needs.tools(),
                needs.materials(),
                needs.cautions(speciesOf(inForce, work)),
                needs.studentMinutes(),
                needs.instructorMinutes());
    }

    private static List<SessionPlan.Row> rows(
            Session session,
            Content inForce,
            @Nullable Lesson lesson,
            Map<Long, DayWork> work,
            Map<Long, String> names) {
        var rows = new ArrayList<SessionPlan.Row>();
        for (var enrolment : session.enrolments()) {
            var tree = work.get(enrolment.treeId());
            if (tree != null) {
                rows.add(row(enrolment, tree, inForce, lesson, names));
            }
        }
        return rows;
    }

    private static SessionPlan.Row row(
            Session.Enrolment enrolment,
            DayWork tree,
            Content inForce,
            @Nullable Lesson lesson,
            Map<Long, String> names) {
        var choice = FirstChoice.of(tree, lesson);
        return new SessionPlan.Row(
                enrolment.bench(),
                nameOf(names, enrolment.personId()),
                enrolment.treeId(),
                tree.tree().label(),
                inForce.species(tree.tree().species()).common(),
                choice == null ? null : inForce.technique(choice.technique()),
                choice == null ? null : choice.stepId(),
                choice == null ? tree.otherwise() : FirstChoice.why(choice, lesson),
                choice == null ? tree.measureFirst() : choice.measureFirst());
    }

    private Map<Long, DayWork> workOf(Actor actor, Session session) {
        var ids = session.enrolments().stream().map(Session.Enrolment::treeId).toList();
        return standings.workOn(actor, session.courseId(), ids, session.heldOn()).stream()
                .collect(Collectors.toMap(work -> work.tree().id(), work -> work));
    }

    private Map<Long, String> namesOf(Session session) {
        var ids = new HashSet<>(session.instructorIds());
        session.enrolments().forEach(enrolment -> ids.add(enrolment.personId()));
        return people.names(ids);
    }

    private static Map<Long, Species> speciesOf(Content content, Map<Long, DayWork> work) {
        var species = new HashMap<Long, Species>();
        work.forEach((id, tree) -> species.put(id, content.species(tree.tree().species())));
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
