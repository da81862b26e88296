package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
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

    /** The same of several that differ in their days; what is wrong with a day is told at it. */
    void check(long courseId, NewSessions wanted) {
        var faults = new ArrayList<Fault>();
        for (int i = 0; i < wanted.days().size(); i++) {
            var ofDay = new ArrayList<Fault>();
            checkTimes(wanted.on(courseId, wanted.days().get(i)), ofDay);
            for (var fault : ofDay) {
                var day = "days[%d]".formatted(i);
                faults.add(
                        fault.field().equals("heldOn") ? new Fault(day, fault.message()) : fault);
            }
        }
        checkLesson(wanted.lesson(), faults);
        checkInstructors(wanted.on(courseId, wanted.days().get(0)), faults);
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults.stream().distinct().toList());
        }
    }

    /** Refuses a session one of whose instructors stands elsewhere at that time. */
    void checkOverlap(NewSession session, List<SessionEntity> sameDay) {
        var found = overlap(session, sameDay);
        if (found != null) {
            throw Refused.conflict(found, "Maybe choose another time or another instructor.");
        }
    }

    /** Which instructor stands elsewhere at that time, in a sentence; null when nobody does. */
    @Nullable String overlap(NewSession session, List<SessionEntity> others) {
        for (var other : others) {
            var both = new ArrayList<>(session.instructorIds());
            both.retainAll(Set.copyOf(other.instructorIds));
            if (!both.isEmpty() && other.overlaps(session)) {
                var names = people.names(both);
                return "%s already teaches session %d on %s from %s to %s in %s."
                        .formatted(
                                names.getOrDefault(both.get(0), "Person " + both.get(0)),
                                other.id,
                                other.heldOn,
                                other.startsAt,
                                other.endsAt,
                                other.place);
            }
        }
        return null;
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

    /**
     * Trees that ask for a place, by their keepers' names and then their own.
     *
     * @param treeIds null for every tree of the course's students
     */
    List<SessionPlaces.Asking> asking(long courseId, @Nullable List<Long> treeIds) {
        var students = peopleUnchecked.members(courseId, Role.STUDENT);
        var order = new HashMap<Long, Integer>();
        students.forEach(student -> order.put(student.id(), order.size()));
        var kept = students.isEmpty() ? List.<Tree>of() : treesUnchecked.ofKeepers(order.keySet());
        if (treeIds != null) {
            requireKept(treeIds, kept);
        }
        return kept.stream()
                .filter(tree -> treeIds == null || treeIds.contains(tree.id()))
                .sorted(
                        Comparator.comparing((Tree tree) -> order.get(tree.keeperId()))
                                .thenComparing(Tree::label)
                                .thenComparing(Tree::id))
                .map(tree -> new SessionPlaces.Asking(tree.keeperId(), tree.id(), null))
                .toList();
    }

    private static void requireKept(List<Long> treeIds, List<Tree> kept) {
        var ids = kept.stream().map(Tree::id).collect(Collectors.toSet());
        var faults = new ArrayList<Fault>();
        for (int i = 0; i < treeIds.size(); i++) {
            if (!ids.contains(treeIds.get(i))) {
                faults.add(
                        new Fault(
                                "treeIds[%d]".formatted(i),
                                "Tree %d is not one that a student of the course keeps."
                                        .formatted(treeIds.get(i))));
            }
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
        requireOnTheClock("startsAt", session.heldOn(), session.startsAt(), faults);
        requireOnTheClock("endsAt", session.heldOn(), session.endsAt(), faults);
        var lastDay = today.date().plusYears(YEARS_AHEAD);
        if (session.heldOn().getYear() < FIRST_YEAR || session.heldOn().isAfter(lastDay)) {
            faults.add(
                    new Fault(
                            "heldOn",
                            "Expected a day from %d to %s; found %s."
                                    .formatted(FIRST_YEAR, lastDay, session.heldOn())));
        }
    }

    /** On the day clocks are put forward, an hour of the night is left out. */
    private void requireOnTheClock(
            String field, LocalDate day, LocalTime time, List<Fault> faults) {
        if (ClockChanges.skips(today.zone(), day, time)) {
            faults.add(
                    new Fault(
                            field,
                            "Expected a time that the clocks show on %s; they are put forward past %s."
                                    .formatted(day, time)));
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
