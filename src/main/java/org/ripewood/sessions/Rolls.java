package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Courses;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** Who came to a class; marked on its day or later by those who run the course. */
@ApplicationScoped
@Transactional
public class Rolls {

    private final SessionReach reach;
    private final SessionBook sessions;
    private final EnrolmentBook enrolments;
    private final RollMarks marks;
    private final People people;
    private final Courses courses;
    private final Today today;

    Rolls(
            SessionReach reach,
            SessionBook sessions,
            EnrolmentBook enrolments,
            RollMarks marks,
            People people,
            Courses courses,
            Today today) {
        this.reach = reach;
        this.sessions = sessions;
        this.enrolments = enrolments;
        this.marks = marks;
        this.people = people;
        this.courses = courses;
        this.today = today;
    }

    /** The roll of a session within reach; 404 otherwise. A student sees their own line. */
    public Roll of(Actor actor, long sessionId) {
        var session = reach.reached(actor, sessionId);
        return told(actor, session);
    }

    /**
     * Says who came; those who run the course only. 409 before the day and for a class called off,
     * 412 when the session is another version by now. What is said again counts once; what is said
     * anew takes the old mark's place, which is kept.
     */
    public Roll mark(Actor actor, long sessionId, long version, NewRoll roll) {
        var session = reach.toChange(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        if (session.version != version) {
            throw Refused.stale("class");
        }
        requireOpen(session);
        var known = marks.of(sessionId);
        requireEnrolled(roll, enrolled(session, known));
        var changed = false;
        for (var said : roll.marks()) {
            changed |= say(actor, sessionId, said, known.get(said.personId()));
        }
        if (changed) {
            session.changedAt = today.now();
            sessions.flush();
        }
        return told(actor, session);
    }

    /** What is marked of a person within reach, latest class first, at most 100; 404 otherwise. */
    public List<ClassAttended> ofPerson(Actor actor, long personId) {
        if (!people.reaches(actor, personId)) {
            throw Refused.notFound("person", personId);
        }
        return marks.ofPerson(personId);
    }

    /**
     * Those who are marked at a session that was just read; a student sees their own line. While
     * nobody is marked, one query.
     */
    public List<Roll.Line> marked(Actor actor, Session read) {
        var known = marks.of(read.id());
        if (known.isEmpty()) {
            return List.of();
        }
        var persons = new LinkedHashSet<Long>();
        read.enrolments().forEach(enrolment -> persons.add(enrolment.personId()));
        persons.addAll(known.keySet());
        var seesAll = courses.runs(actor, read.courseId());
        return persons.stream()
                .filter(person -> known.containsKey(person))
                .filter(person -> seesAll || person == actor.personId())
                .map(person -> line(person, known))
                .toList();
    }

    private boolean say(
            Actor actor, long sessionId, NewRoll.Said said, @Nullable RollMarkEntity known) {
        if (known != null && known.presence == said.presence()) {
            return false;
        }
        if (known != null) {
            known.markedFor = null;
            known.replacedAt = today.now();
            // before the new one comes, or the two would be in force at once
            marks.flush();
        }
        var mark = RollMarkEntity.of(sessionId, said.personId(), said.presence());
        mark.byId = actor.personId();
        mark.markedAt = today.now();
        marks.persist(mark);
        return true;
    }

    private Roll told(Actor actor, SessionEntity session) {
        var id = requireNonNull(session.id);
        var known = marks.of(id);
        var seesAll = courses.runs(actor, session.courseId);
        var lines =
                enrolled(session, known).stream()
                        .filter(person -> seesAll || person == actor.personId())
                        .map(person -> line(person, known))
                        .toList();
        return new Roll(id, session.version, session.heldOn, isOpen(session), lines);
    }

    private static Roll.Line line(long person, Map<Long, RollMarkEntity> known) {
        var mark = known.get(person);
        return new Roll.Line(person, mark == null ? null : mark.told());
    }

    /** Who comes, and who was marked before they were taken off. */
    private Set<Long> enrolled(SessionEntity session, Map<Long, RollMarkEntity> known) {
        var persons = new LinkedHashSet<Long>();
        enrolments
                .of(List.of(requireNonNull(session.id)))
                .forEach(enrolment -> persons.add(enrolment.personId));
        persons.addAll(known.keySet());
        return persons;
    }

    private boolean isOpen(SessionEntity session) {
        return session.cancelledAt == null && !session.heldOn.isAfter(today.last());
    }

    private void requireOpen(SessionEntity session) {
        if (session.cancelledAt != null) {
            throw Refused.conflict(
                    "The session is cancelled: " + session.cancelledBecause,
                    "Maybe another session was meant.");
        }
        if (!isOpen(session)) {
            throw Refused.conflict(
                    "The class is held on %s; who came can be said from that day on."
                            .formatted(session.heldOn),
                    null);
        }
    }

    private static void requireEnrolled(NewRoll roll, Collection<Long> enrolled) {
        var faults = new ArrayList<Fault>();
        var named = new HashSet<Long>();
        for (int i = 0; i < roll.marks().size(); i++) {
            var field = "marks[%d].personId".formatted(i);
            var person = roll.marks().get(i).personId();
            if (!named.add(person)) {
                faults.add(new Fault(field, "Person %d is named twice.".formatted(person)));
            } else if (!enrolled.contains(person)) {
                faults.add(
                        new Fault(
                                field,
                                "Person %d is not enrolled in this session.".formatted(person)));
            }
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }
}
