package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** Opens courses and says who belongs to them. Called within the façade's transaction. */
@ApplicationScoped
public class CourseBook {

    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    /** Further ahead is a slip of the pen (common practice, no source). */
    private static final int YEARS_AHEAD = 20;

    private final Courses courses;
    private final Memberships memberships;
    private final Persons persons;
    private final Today today;

    CourseBook(Courses courses, Memberships memberships, Persons persons, Today today) {
        this.courses = courses;
        this.memberships = memberships;
        this.persons = persons;
        this.today = today;
    }

    public CourseEntity open(NewCourse course) {
        check(course);
        var entity = new CourseEntity();
        entity.name = course.name().strip();
        entity.startsOn = course.startsOn();
        entity.endsOn = course.endsOn();
        courses.persistAndFlush(entity);
        return entity;
    }

    private void check(NewCourse course) {
        var faults = new ArrayList<Fault>();
        var latest = today.date().plusYears(YEARS_AHEAD);
        within("startsOn", course.startsOn(), latest, faults);
        within("endsOn", course.endsOn(), latest, faults);
        if (faults.isEmpty() && course.endsOn().isBefore(course.startsOn())) {
            faults.add(
                    new Fault(
                            "endsOn",
                            "expected the first day %s or later, found %s"
                                    .formatted(course.startsOn(), course.endsOn())));
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    private static void within(String field, LocalDate day, LocalDate latest, List<Fault> faults) {
        if (day.isBefore(EARLIEST) || day.isAfter(latest)) {
            faults.add(
                    new Fault(
                            field,
                            "expected a day from %s to %s, found %s"
                                    .formatted(EARLIEST, latest, day)));
        }
    }

    /** Opens a course that its instructors teach again, and its students attend if wanted. */
    public CourseEntity runAgain(long courseId, NewRun run) {
        var before = courses.require(courseId);
        var name = run.name() == null || run.name().isBlank() ? before.name : run.name();
        var opened = open(new NewCourse(name, run.startsOn(), run.endsOn()));
        copy(courseId, Role.INSTRUCTOR, opened.id);
        if (run.students()) {
            copy(courseId, Role.STUDENT, opened.id);
        }
        return opened;
    }

    /** Those who may no longer sign in, or are no longer what they were, are left out. */
    private void copy(long from, Role as, long to) {
        persons.membersOf(from, as).stream()
                .filter(person -> person.active && person.roles.contains(as))
                .forEach(person -> add(to, person.id, as, today.date()));
    }

    /** By course, in two queries; courses without anybody are absent. */
    public Map<Long, List<Membership>> history(Collection<Long> courseIds) {
        var all = memberships.ofCourses(courseIds);
        var names =
                persons.byIds(all.stream().map(one -> one.personId).distinct().toList()).stream()
                        .collect(Collectors.toMap(person -> person.id, person -> person.name));
        return all.stream()
                .collect(
                        Collectors.groupingBy(
                                one -> one.courseId,
                                Collectors.mapping(
                                        one -> one.toRecord(names.getOrDefault(one.personId, "")),
                                        Collectors.toList())));
    }

    public void leave(Actor actor, long courseId, long personId, LocalDate on) {
        courses.require(courseId);
        var membership =
                memberships
                        .of(courseId, personId)
                        .orElseThrow(() -> Refused.notFound("member", personId));
        if (on.isBefore(membership.joinedOn) || on.isAfter(today.date())) {
            throw Refused.invalid(
                    "on",
                    "expected a day from %s, when they joined, to %s, found %s"
                            .formatted(membership.joinedOn, today.date(), on));
        }
        membership.leftOn = on;
        membership.endedById = actor.personId();
        membership.memberOf = null;
        memberships.flush();
    }

    public void join(long courseId, long personId, Role as, LocalDate since) {
        var course = courses.require(courseId);
        var person = persons.require(personId);
        if (as == Role.REGISTRAR) {
            throw Refused.invalid("as", "expected student or instructor, found registrar");
        }
        if (!person.active || !person.roles.contains(as)) {
            throw Refused.conflict(
                    "%s is no %s of the school.".formatted(person.name, word(as)),
                    "Maybe another person was meant, or the role is still to be given.");
        }
        if (since.isBefore(EARLIEST) || since.isAfter(today.date())) {
            throw Refused.invalid(
                    "since",
                    "expected a day from %s to %s, found %s"
                            .formatted(EARLIEST, today.date(), since));
        }
        var known = memberships.of(courseId, personId);
        if (known.isEmpty()) {
            add(courseId, personId, as, since);
        } else if (known.get().role != as) {
            throw Refused.conflict(
                    "%s is already %s of %s."
                            .formatted(person.name, word(known.get().role), course.name),
                    null);
        }
    }

    private void add(long courseId, long personId, Role as, LocalDate since) {
        memberships.persistAndFlush(MembershipEntity.of(courseId, personId, as, since));
    }

    private static String word(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }
}
