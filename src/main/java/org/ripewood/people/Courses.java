package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** Courses, and who belongs to them. */
@ApplicationScoped
@Transactional
public class Courses {

    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    /** Further ahead is a slip of the pen (common practice, no source). */
    private static final int YEARS_AHEAD = 20;

    private final CourseRows courses;
    private final MembershipRows memberships;
    private final PersonRows persons;
    private final Today today;

    Courses(CourseRows courses, MembershipRows memberships, PersonRows persons, Today today) {
        this.courses = courses;
        this.memberships = memberships;
        this.persons = persons;
        this.today = today;
    }

    /** Opens a course; registrars only. */
    public Course open(Actor actor, NewCourse course) {
        actor.require(Role.REGISTRAR, "open courses");
        return enter(course).toRecord();
    }

    /**
     * Adds a person to a course as student or instructor; registrars only.
     *
     * @return false when they belonged to it already, and nothing was changed
     */
    public boolean join(Actor actor, long courseId, long personId, Role as) {
        actor.require(Role.REGISTRAR, "say who belongs to a course");
        return enterMember(courseId, personId, as, today.date());
    }

    /** The same since a day gone by. */
    public void join(Actor actor, long courseId, long personId, Role as, LocalDate since) {
        actor.require(Role.REGISTRAR, "say who belongs to a course");
        enterMember(courseId, personId, as, since);
    }

    /**
     * Ends a membership as of a day up to today; registrars only. From now on an instructor no
     * longer reaches the course's students, and a student is no longer reached by way of it. That
     * they belonged to it is kept.
     */
    public void leave(Actor actor, long courseId, long personId, LocalDate on) {
        actor.require(Role.REGISTRAR, "say who belongs to a course");
        end(actor, courseId, personId, on);
    }

    /** Who belongs to a course or did, in the order they came; for those who run it. */
    public List<Membership> memberships(Actor actor, long courseId) {
        var roster = roster(actor, courseId);
        roster.requireRuns("who belonged to it");
        return roster.memberships();
    }

    /** The same of several courses, by course; registrars only. */
    public Map<Long, List<Membership>> memberships(Actor actor, Collection<Long> courseIds) {
        actor.require(Role.REGISTRAR, "see who belongs to every course");
        return history(courseIds);
    }

    /** Opens a course anew with its instructors, and its students if wanted; registrars only. */
    public Course runAgain(Actor actor, long courseId, NewRun run) {
        actor.require(Role.REGISTRAR, "open courses");
        return enterAgain(courseId, run).toRecord();
    }

    /** Courses the actor teaches or attends; a registrar sees all. Newest first. */
    public List<Course> list(Actor actor) {
        return courses.inReach(actor).stream().map(CourseEntity::toRecord).toList();
    }

    /** A course within reach, and what the actor is there; null for a registrar who is neither. */
    public record Own(Course course, @Nullable Role as) {}

    /** The same as {@link #list}, with what the actor is in each, in one query. */
    public List<Own> own(Actor actor) {
        return courses.withRole(actor).stream()
                .map(row -> new Own(((CourseEntity) row[0]).toRecord(), (Role) row[1]))
                .toList();
    }

    /** Courses the actor belongs to in that role, newest first. */
    public List<Course> as(Actor actor, Role as) {
        return courses.ofMember(actor.personId(), as).stream().map(CourseEntity::toRecord).toList();
    }

    /** That somebody belongs to a course, and as what. */
    public record Belonging(Course course, Role as) {}

    /** Courses within the actor's reach that a person belongs to, newest first. */
    public List<Belonging> shared(Actor actor, long personId) {
        var as =
                memberships.list("personId = ?1 and leftOn is null", personId).stream()
                        .collect(Collectors.toMap(one -> one.courseId, one -> one.role));
        return courses.inReach(actor).stream()
                .map(CourseEntity::toRecord)
                .flatMap(
                        course ->
                                Stream.ofNullable(as.get(course.id()))
                                        .map(role -> new Belonging(course, role)))
                .toList();
    }

    /** What courses are called, by id, in one query; no reach is asked. */
    public Map<Long, String> names(Collection<Long> courseIds) {
        return courses.byIds(courseIds).stream()
                .map(CourseEntity::toRecord)
                .collect(Collectors.toMap(Course::id, Course::name));
    }

    /** A course within reach; 404 otherwise. */
    public Course get(Actor actor, long courseId) {
        return courses.requireInReach(actor, courseId).toRecord();
    }

    /** Members of a course within reach in that role, by name; 404 otherwise. */
    public List<Person> members(Actor actor, long courseId, Role as) {
        get(actor, courseId);
        return persons.membersOf(courseId, as).stream().map(PersonEntity::toRecord).toList();
    }

    /** Those of these courses that are within reach. */
    public Set<Long> inReach(Actor actor, Collection<Long> courseIds) {
        return courseIds.isEmpty() || actor.is(Role.REGISTRAR)
                ? Set.copyOf(courseIds)
                : memberships.coursesOf(actor.personId(), courseIds);
    }

    /** A course within reach and who belongs to it, in three queries; 404 otherwise. */
    public Roster roster(Actor actor, long courseId) {
        var course = get(actor, courseId);
        var rows = memberships.ofCourses(List.of(courseId));
        var people = persons.withRoles(rows.stream().map(row -> row.personId).distinct().toList());
        var names = people.stream().collect(Collectors.toMap(Person::id, Person::name));
        var all =
                rows.stream()
                        .map(row -> row.toRecord(names.getOrDefault(row.personId, "")))
                        .toList();
        var instructors = now(all, people, Role.INSTRUCTOR);
        var runs =
                actor.is(Role.REGISTRAR)
                        || (actor.is(Role.INSTRUCTOR)
                                && instructors.stream()
                                        .anyMatch(person -> person.id() == actor.personId()));
        return new Roster(course, runs, all, instructors, now(all, people, Role.STUDENT));
    }

    private static List<Person> now(List<Membership> all, List<Person> people, Role as) {
        var ids =
                all.stream()
                        .filter(membership -> Roster.isNow(membership, as))
                        .map(Membership::personId)
                        .collect(Collectors.toSet());
        return people.stream().filter(person -> ids.contains(person.id())).toList();
    }

    /** Whether the actor runs a course: an instructor of it, or a registrar. */
    public boolean runs(Actor actor, long courseId) {
        return actor.is(Role.REGISTRAR)
                || (actor.is(Role.INSTRUCTOR)
                        && persons.isMember(courseId, actor.personId(), Role.INSTRUCTOR));
    }

    /** Goes on only for those who {@link #runs run} the course; 403 for everybody else. */
    public void requireRuns(Actor actor, long courseId, String toSeeWhat) {
        if (!runs(actor, courseId)) {
            throw Roster.notRun(toSeeWhat);
        }
    }

    private CourseEntity enter(NewCourse course) {
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
    private CourseEntity enterAgain(long courseId, NewRun run) {
        var before = courses.require(courseId);
        var name = run.name() == null || run.name().isBlank() ? before.name : run.name();
        var opened = enter(new NewCourse(name, run.startsOn(), run.endsOn()));
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

    /** By course, in one query; courses without anybody are absent. */
    private Map<Long, List<Membership>> history(Collection<Long> courseIds) {
        return memberships.named(courseIds).stream()
                .collect(
                        Collectors.groupingBy(
                                row -> ((MembershipEntity) row[0]).courseId,
                                Collectors.mapping(
                                        row ->
                                                ((MembershipEntity) row[0])
                                                        .toRecord((String) row[1]),
                                        Collectors.toList())));
    }

    private void end(Actor actor, long courseId, long personId, LocalDate on) {
        courses.require(courseId);
        var membership =
                memberships
                        .of(courseId, personId)
                        .orElseThrow(() -> Refused.notFound("member", personId));
        if (on.isBefore(membership.joinedOn) || on.isAfter(today.last())) {
            throw Refused.invalid(
                    "on",
                    "expected a day from %s, when they joined, to %s, found %s"
                            .formatted(membership.joinedOn, today.last(), on));
        }
        membership.leftOn = on;
        membership.endedById = actor.personId();
        membership.memberOf = null;
        memberships.flush();
    }

    private boolean enterMember(long courseId, long personId, Role as, LocalDate since) {
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
        if (since.isBefore(EARLIEST) || since.isAfter(today.last())) {
            throw Refused.invalid(
                    "since",
                    "expected a day from %s to %s, found %s"
                            .formatted(EARLIEST, today.last(), since));
        }
        var known = memberships.of(courseId, personId);
        if (known.isEmpty()) {
            add(courseId, personId, as, since);
            return true;
        }
        if (known.get().role != as) {
            throw Refused.conflict(
                    "%s is already %s of %s."
                            .formatted(person.name, word(known.get().role), course.name),
                    null);
        }
        return false;
    }

    private void add(long courseId, long personId, Role as, LocalDate since) {
        memberships.persistAndFlush(MembershipEntity.of(courseId, personId, as, since));
    }

    private static String word(Role role) {
        return role.name().toLowerCase(Locale.ROOT);
    }
}
