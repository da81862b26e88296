package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.course.CourseContent;
import org.ripewood.people.People;
import org.ripewood.people.PeopleUnchecked;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.trees.TreesUnchecked;

/** What annotations cannot check of a class date and of an enrolment; all faults at once. */
@ApplicationScoped
class SessionChecks {

    private static final int FIRST_YEAR = 1900;

    /** Further ahead a day is more likely mistyped than planned. */
    private static final int YEARS_AHEAD = 10;

    private final People people;
    private final PeopleUnchecked peopleUnchecked;
    private final CourseContent content;
    private final Trees trees;
    private final TreesUnchecked treesUnchecked;
    private final Today today;

    SessionChecks(
            People people,
            PeopleUnchecked peopleUnchecked,
            CourseContent content,
            Trees trees,
            TreesUnchecked treesUnchecked,
            Today today) {
        this.people = people;
        this.peopleUnchecked = peopleUnchecked;
        this.content = content;
        this.trees = trees;
        this.treesUnchecked = treesUnchecked;
        this.today = today;
    }

    void check(NewSession session) {
        var faults = new ArrayList<Fault>();
        checkTimes(session, faults);
        checkLesson(session.lesson(), faults);
        checkInstructors(session, faults);
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    /** Refuses a session one of whose instructors stands elsewhere at that time. */
    void checkOverlap(NewSession session, List<SessionEntity> sameDay) {
        for (var other : sameDay) {
            var both = new ArrayList<>(session.instructorIds());
            both.retainAll(Set.copyOf(other.instructorIds));
            if (!both.isEmpty() && other.overlaps(session)) {
                var names = people.names(both);
                throw Refused.conflict(
                        "%s already teaches session %d on %s from %s to %s in %s."
                                .formatted(
                                        names.getOrDefault(both.get(0), "Person " + both.get(0)),
                                        other.id,
                                        other.heldOn,
                                        other.startsAt,
                                        other.endsAt,
                                        other.place),
                        "Maybe choose another time or another instructor.");
            }
        }
    }

    void check(Actor actor, SessionEntity session, NewEnrolment enrolment) {
        trees.refuseLeft(actor, enrolment.treeId());
        var faults = new ArrayList<Fault>();
        var attends =
                peopleUnchecked.members(session.courseId, Role.STUDENT).stream()
                        .anyMatch(person -> person.id() == enrolment.personId());
        if (!attends) {
            faults.add(
                    new Fault(
                            "personId",
                            "Person %d is not a student of the session's course."
                                    .formatted(enrolment.personId())));
        } else if (!keeps(enrolment)) {
            faults.add(
                    new Fault(
                            "treeId",
                            "Tree %d is not one this student keeps."
                                    .formatted(enrolment.treeId())));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    private boolean keeps(NewEnrolment enrolment) {
        return treesUnchecked.ofKeepers(List.of(enrolment.personId())).stream()
                .map(Tree::id)
                .anyMatch(id -> id.equals(enrolment.treeId()));
    }

    private void checkTimes(NewSession session, List<Fault> faults) {
        if (!session.endsAt().isAfter(session.startsAt())) {
            faults.add(
                    new Fault(
                            "endsAt",
                            "Expected a time after the start, %s; found %s."
                                    .formatted(session.startsAt(), session.endsAt())));
        }
        var lastDay = today.date().plusYears(YEARS_AHEAD);
        if (session.heldOn().getYear() < FIRST_YEAR || session.heldOn().isAfter(lastDay)) {
            faults.add(
                    new Fault(
                            "heldOn",
                            "Expected a day from %d to %s; found %s."
                                    .formatted(FIRST_YEAR, lastDay, session.heldOn())));
        }
    }

    private void checkLesson(@Nullable String lesson, List<Fault> faults) {
        var lessons = content.inForce().lessons();
        if (lesson != null && !lessons.containsKey(lesson)) {
            faults.add(
                    new Fault(
                            "lesson",
                            "There is no lesson “%s”.".formatted(lesson)
                                    + Suggestion.maybe(lessons.keySet(), lesson)));
        }
    }

    /** Guests may help, but someone who teaches the course has to be there. */
    private void checkInstructors(NewSession session, List<Fault> faults) {
        var teachers =
                peopleUnchecked.members(session.courseId(), Role.INSTRUCTOR).stream()
                        .map(Person::id)
                        .collect(Collectors.toSet());
        var named = new HashSet<Long>();
        for (var id : session.instructorIds()) {
            if (!named.add(id)) {
                faults.add(new Fault("instructorIds", "Person %d is named twice.".formatted(id)));
            } else if (!teachers.contains(id) && !teachesElsewhere(id)) {
                faults.add(
                        new Fault(
                                "instructorIds", "Person %d is not an instructor.".formatted(id)));
            }
        }
        if (named.stream().noneMatch(teachers::contains)) {
            faults.add(new Fault("instructorIds", "Expected at least one who teaches the course."));
        }
    }

    private boolean teachesElsewhere(long personId) {
        return find(personId)
                .filter(person -> person.roles().contains(Role.INSTRUCTOR))
                .isPresent();
    }

    private Optional<Person> find(long personId) {
        return people.names(List.of(personId)).isEmpty()
                ? Optional.empty()
                : Optional.of(peopleUnchecked.get(personId));
    }
}
