package org.ripewood.web.courses;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ripewood.course.CourseContent;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.sessions.NewEnrolment;
import org.ripewood.sessions.Presence;
import org.ripewood.sessions.Roll;
import org.ripewood.sessions.Rolls;
import org.ripewood.sessions.Session;
import org.ripewood.sessions.Sessions;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/** Lays out what the page of a session shows. */
@ApplicationScoped
class SessionPageAssembler {

    private static final String COMING = "coming";

    private final People people;
    private final Courses schoolCourses;
    private final Trees trees;
    private final Sessions sessions;
    private final Rolls rolls;
    private final CourseContent content;

    private final EditConflicts clashes;

    SessionPageAssembler(
            People people,
            Courses schoolCourses,
            Trees trees,
            Sessions sessions,
            Rolls rolls,
            CourseContent content,
            EditConflicts clashes) {
        this.people = people;
        this.schoolCourses = schoolCourses;
        this.trees = trees;
        this.sessions = sessions;
        this.rolls = rolls;
        this.content = content;
        this.clashes = clashes;
    }

    SessionPageModel lay(Actor actor, long sessionId, FormState sent) {
        var session = sessions.get(actor, sessionId);
        var code = session.lesson();
        var students = schoolCourses.members(actor, session.courseId(), Role.STUDENT);
        var ofCourse = trees(actor, session, students);
        var roll = rolls.of(actor, sessionId);
        var names = people.names(everybody(session, ofCourse, roll));
        var typed = clashes.mend(sent, now(session), about(session));
        typed = clashes.mend(typed, SessionPageModel.asItIs(session), aboutMove(session));
        typed = clashes.mend(typed, rollNow(session, roll), aboutRoll(session, roll, names));
        var enrolled =
                session.enrolments().stream()
                        .map(Session.Enrolment::treeId)
                        .collect(Collectors.toCollection(HashSet::new));
        session.waiting().forEach(wait -> enrolled.add(wait.treeId()));
        var runs = actor.is(Role.INSTRUCTOR) || actor.is(Role.REGISTRAR);
        return new SessionPageModel(
                session,
                schoolCourses.get(actor, session.courseId()),
                code == null ? null : content.inForce().lessons().get(code),
                names,
                trees.labels(enrolled),
                runs
                        ? ofCourse.stream().filter(tree -> !enrolled.contains(tree.id())).toList()
                        : List.of(),
                runs ? withoutTree(students, ofCourse) : List.of(),
                runs,
                roll,
                typed);
    }

    private static FormState now(Session session) {
        var cancelled = session.cancelled();
        return FormState.fresh("cancellation")
                .with("version", session.version())
                .with("heldOn", session.heldOn())
                .with("place", session.place())
                .with(COMING, session.enrolments().size())
                .withIfKnown("reason", cancelled == null ? null : cancelled.reason());
    }

    private static FormState rollNow(Session session, Roll roll) {
        var coming = session.enrolments().size();
        var now = SessionPageModel.marked(roll).with(COMING, coming);
        return roll.open() ? now : now.without("version");
    }

    private EditConflicts.About aboutRoll(Session session, Roll roll, Map<Long, String> names) {
        var labels = new ArrayList<Label>();
        for (var line : roll.lines()) {
            var name = names.getOrDefault(line.personId(), "");
            labels.add(new Label("mark." + line.personId(), name, SessionPageAssembler::came));
        }
        labels.add(Label.of(COMING, "Trees that come"));
        return new EditConflicts.About("class_session", session.id(), labels, people::names);
    }

    private static String came(String typed) {
        return Stream.of(Presence.values())
                .filter(presence -> presence.name().equalsIgnoreCase(typed))
                .map(RollFormat::came)
                .findFirst()
                .orElse(typed);
    }

    private EditConflicts.About aboutMove(Session session) {
        var labels =
                List.of(
                        Label.of("heldOn", "Day"),
                        Label.of("startsAt", "Starts"),
                        Label.of("endsAt", "Ends"),
                        Label.of("place", "Place"),
                        Label.of("places", "Room for how many trees"));
        return new EditConflicts.About("class_session", session.id(), labels, people::names);
    }

    private EditConflicts.About about(Session session) {
        var labels =
                List.of(
                        Label.of("reason", "Cancelled because"),
                        Label.of("heldOn", "Held on"),
                        Label.of("place", "Place"),
                        Label.of(COMING, "Trees that come"));
        return new EditConflicts.About("class_session", session.id(), labels, people::names);
    }

    /** The keeper comes with the tree. */
    NewEnrolment enrolment(Actor actor, TreeAtBench coming) {
        var tree = trees.get(actor, coming.treeId());
        return new NewEnrolment(tree.keeperId(), tree.id(), coming.bench());
    }

    private static List<String> withoutTree(List<Person> students, List<Tree> ofCourse) {
        var keepers = ofCourse.stream().map(Tree::keeperId).collect(Collectors.toSet());
        return students.stream()
                .filter(student -> !keepers.contains(student.id()))
                .map(Person::name)
                .toList();
    }

    /** How many come and wait, in a sentence. */
    String coming(Session session) {
        var coming = session.enrolments().size();
        var waiting = session.waiting().size();
        var sentence = coming == 1 ? "1 tree comes" : coming + " trees come";
        return waiting == 0
                ? sentence + "."
                : sentence + (waiting == 1 ? ", 1 waits." : ", %d wait.".formatted(waiting));
    }

    private List<Tree> trees(Actor actor, Session session, List<Person> students) {
        var keepers = students.stream().map(Person::id).collect(Collectors.toSet());
        session.enrolments().forEach(enrolment -> keepers.add(enrolment.personId()));
        session.waiting().forEach(wait -> keepers.add(wait.personId()));
        return trees.ofKeepers(actor, keepers).stream()
                .sorted(Comparator.comparing(Tree::label))
                .toList();
    }

    private static Set<Long> everybody(Session session, List<Tree> ofCourse, Roll roll) {
        var ids = new HashSet<>(session.instructorIds());
        session.enrolments().forEach(enrolment -> ids.add(enrolment.personId()));
        session.waiting().forEach(wait -> ids.add(wait.personId()));
        ofCourse.forEach(tree -> ids.add(tree.keeperId()));
        for (var line : roll.lines()) {
            ids.add(line.personId());
            if (line.mark() != null) {
                ids.add(line.mark().byId());
            }
        }
        return ids;
    }
}
