package org.ripewood.accounts;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Course;
import org.ripewood.people.CourseBook;
import org.ripewood.people.CourseEntity;
import org.ripewood.people.Courses;
import org.ripewood.people.Membership;
import org.ripewood.people.NewCourse;
import org.ripewood.people.NewPerson;
import org.ripewood.people.NewRun;
import org.ripewood.people.Person;
import org.ripewood.people.PersonEntity;
import org.ripewood.people.Persons;
import org.ripewood.people.Reach;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.signin.Confirmations;

/** The persons of the school and who may reach whom. */
@ApplicationScoped
@Transactional
public class People {

    private final Persons persons;
    private final Courses courses;
    private final Register register;
    private final CourseBook book;
    private final Confirmations confirmations;
    private final Reach reach;
    private final Today today;

    People(
            Persons persons,
            Courses courses,
            Register register,
            CourseBook book,
            Confirmations confirmations,
            Reach reach,
            Today today) {
        this.persons = persons;
        this.courses = courses;
        this.register = register;
        this.book = book;
        this.confirmations = confirmations;
        this.reach = reach;
        this.today = today;
    }

    /** A person by id; 404 when there is none. */
    public Person get(long personId) {
        return persons.require(personId).toRecord();
    }

    /** A person by the name they sign in with. */
    public Optional<Person> findByLogin(String login) {
        return persons.byLogin(login).map(PersonEntity::toRecord);
    }

    /** Names by id, in one query; unknown ids are absent. */
    public Map<Long, String> names(Collection<Long> personIds) {
        return persons.byIds(personIds).stream()
                .collect(Collectors.toMap(person -> person.id, person -> person.name));
    }

    /**
     * Everybody, by name; registrars only.
     *
     * @param words that stand in the name or the login, in any case of letters; blank for everybody
     */
    public Paged<Person> everybody(Actor actor, PageRequest page, String words) {
        actor.require(Role.REGISTRAR, "list everybody");
        return persons.page(page, words);
    }

    /** Whether nobody is entered yet. */
    public boolean empty() {
        return persons.count() == 0;
    }

    /**
     * Enters the first registrar; refused unless the school is empty and the code is the one from
     * the log.
     */
    public Person setUp(String code, NewPerson first) {
        return register.setUp(code, first).toRecord();
    }

    /** Enters a person; registrars only. */
    public Person enter(Actor actor, NewPerson person) {
        actor.require(Role.REGISTRAR, "enter persons");
        return register.enter(person).toRecord();
    }

    /** Enters a person who chooses a password once they are invited; registrars only. */
    public Person enterGuest(Actor actor, NewGuest guest) {
        actor.require(Role.REGISTRAR, "enter persons");
        return register.invite(guest).toRecord();
    }

    /** Persons whose trees the actor may see, by login. */
    public Map<String, Long> loginsInReach(Actor actor) {
        return persons.logins(reach.of(actor));
    }

    /**
     * Lets a person sign in or no longer, which ends their sessions; registrars only, and never for
     * themselves.
     */
    public Person setActive(Actor actor, long personId, long version, boolean active) {
        actor.require(Role.REGISTRAR, "say who may sign in");
        return register.setActive(actor, personId, version, active).toRecord();
    }

    /**
     * Changes the actor's own password and ends their other sessions.
     *
     * @param session the one that goes on; null ends all
     * @throws Refused 400 for a wrong old password or a new one that cannot be taken, 429 after too
     *     many wrong ones
     */
    @Transactional(Transactional.TxType.NOT_SUPPORTED)
    public void changePassword(
            Actor actor, @Nullable Long session, String oldPassword, String newPassword) {
        confirmations.password(actor, session, "oldPassword", oldPassword);
        register.changePassword(actor, session, newPassword);
    }

    /** Opens a course; registrars only. */
    public Course openCourse(Actor actor, NewCourse course) {
        actor.require(Role.REGISTRAR, "open courses");
        return book.open(course).toRecord();
    }

    /** Adds a person to a course as student or instructor; registrars only. */
    public void join(Actor actor, long courseId, long personId, Role as) {
        actor.require(Role.REGISTRAR, "say who belongs to a course");
        book.join(courseId, personId, as, today.date());
    }

    /** The same since a day gone by. */
    public void join(Actor actor, long courseId, long personId, Role as, LocalDate since) {
        actor.require(Role.REGISTRAR, "say who belongs to a course");
        book.join(courseId, personId, as, since);
    }

    /**
     * Ends a membership as of a day up to today; registrars only. From now on an instructor no
     * longer reaches the course's students, and a student is no longer reached by way of it. That
     * they belonged to it is kept.
     */
    public void leave(Actor actor, long courseId, long personId, LocalDate on) {
        actor.require(Role.REGISTRAR, "say who belongs to a course");
        book.leave(actor, courseId, personId, on);
    }

    /** Who belongs to a course or did, in the order they came; for those who run it. */
    public List<Membership> memberships(Actor actor, long courseId) {
        getCourse(actor, courseId);
        requireRuns(actor, courseId, "who belonged to it");
        return book.history(List.of(courseId)).getOrDefault(courseId, List.of());
    }

    /** The same of several courses, by course; registrars only. */
    public Map<Long, List<Membership>> memberships(Actor actor, Collection<Long> courseIds) {
        actor.require(Role.REGISTRAR, "see who belongs to every course");
        return book.history(courseIds);
    }

    /** Opens a course anew with its instructors, and its students if wanted; registrars only. */
    public Course runAgain(Actor actor, long courseId, NewRun run) {
        actor.require(Role.REGISTRAR, "open courses");
        return book.runAgain(courseId, run).toRecord();
    }

    /** Courses the actor teaches or attends; a registrar sees all. Newest first. */
    public List<Course> courses(Actor actor) {
        return courses.inReach(actor).stream().map(CourseEntity::toRecord).toList();
    }

    /** Courses the actor belongs to in that role, newest first. */
    public List<Course> coursesAs(Actor actor, Role as) {
        return courses.ofMember(actor.personId(), as).stream().map(CourseEntity::toRecord).toList();
    }

    /** What courses are called, by id, in one query; no reach is asked. */
    public Map<Long, String> courseNames(Collection<Long> courseIds) {
        return courses.byIds(courseIds).stream()
                .map(CourseEntity::toRecord)
                .collect(Collectors.toMap(Course::id, Course::name));
    }

    /** A course within reach; 404 otherwise. */
    public Course getCourse(Actor actor, long courseId) {
        return courses.requireInReach(actor, courseId).toRecord();
    }

    /** Members of a course in that role, by name. */
    public List<Person> members(long courseId, Role as) {
        return persons.membersOf(courseId, as).stream().map(PersonEntity::toRecord).toList();
    }

    /**
     * Who may sign in and belongs to a course the actor belongs to, by name; for a registrar
     * everybody who may sign in.
     */
    public List<Person> fellows(Actor actor) {
        return persons.fellowsOf(actor).stream().map(PersonEntity::toRecord).toList();
    }

    /** Whether a person is among the actor's {@link #fellows}. */
    public boolean isFellow(Actor actor, long personId) {
        return persons.isFellow(actor, personId);
    }

    /** Whether the actor runs a course: an instructor of it, or a registrar. */
    public boolean runs(Actor actor, long courseId) {
        return actor.is(Role.REGISTRAR)
                || (actor.is(Role.INSTRUCTOR)
                        && persons.membersOf(courseId, Role.INSTRUCTOR).stream()
                                .anyMatch(person -> person.id == actor.personId()));
    }

    /** Goes on only for those who {@link #runs run} the course; 403 for everybody else. */
    public void requireRuns(Actor actor, long courseId, String toSeeWhat) {
        if (!runs(actor, courseId)) {
            throw Refused.forbidden(
                    "Only instructors of the course and registrars may see %s."
                            .formatted(toSeeWhat));
        }
    }

    /**
     * Whether the actor may see that person's trees: their own, as instructor of a course the
     * person attends, or as registrar.
     */
    public boolean reaches(Actor actor, long personId) {
        return reach.includes(actor, personId);
    }

    /**
     * Students of every course the actor teaches, their own id included; for a registrar null,
     * meaning everybody.
     */
    public @Nullable List<Long> reachable(Actor actor) {
        return reach.of(actor);
    }
}
