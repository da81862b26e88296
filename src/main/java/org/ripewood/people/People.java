package org.ripewood.people;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;

/** The persons of the school and who may reach whom. */
@ApplicationScoped
public class People {

    /** A person by id; 404 when there is none. */
    public Person get(long personId) {
        throw new IllegalStateException("to be built");
    }

    /** A person by the name they sign in with. */
    public Optional<Person> findByLogin(String login) {
        throw new IllegalStateException("to be built");
    }

    /** Names by id, in one query; unknown ids are absent. */
    public Map<Long, String> names(Collection<Long> personIds) {
        throw new IllegalStateException("to be built");
    }

    /** Whether nobody is entered yet. */
    public boolean empty() {
        throw new IllegalStateException("to be built");
    }

    /**
     * Enters the first registrar; refused unless the school is empty and the code is the one from
     * the log.
     */
    public Person setUp(String code, NewPerson first) {
        throw new IllegalStateException("to be built");
    }

    /** Enters a person; registrars only. */
    public Person enter(Actor actor, NewPerson person) {
        throw new IllegalStateException("to be built");
    }

    /** Opens a course; registrars only. */
    public Course openCourse(Actor actor, NewCourse course) {
        throw new IllegalStateException("to be built");
    }

    /** Adds a person to a course as student or instructor; registrars only. */
    public void join(Actor actor, long courseId, long personId, Role as) {
        throw new IllegalStateException("to be built");
    }

    /** Everybody at the school, by name; registrars only. */
    public Paged<Person> everybody(Actor actor, PageRequest page) {
        throw new IllegalStateException("to be built");
    }

    /** Courses the actor teaches or attends; a registrar sees all. Newest first. */
    public List<Course> courses(Actor actor) {
        throw new IllegalStateException("to be built");
    }

    /** A course within reach; 404 otherwise. */
    public Course getCourse(Actor actor, long courseId) {
        throw new IllegalStateException("to be built");
    }

    /** Members of a course in that role, by name. */
    public List<Person> members(long courseId, Role as) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Whether the actor may see that person's trees: their own, as instructor of a course the
     * person attends, or as registrar.
     */
    public boolean reaches(Actor actor, long personId) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Students of every course the actor teaches, their own id included; for a registrar null,
     * meaning everybody.
     */
    public @org.jspecify.annotations.Nullable List<Long> reachable(Actor actor) {
        throw new IllegalStateException("to be built");
    }
}
