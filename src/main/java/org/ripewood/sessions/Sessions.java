package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.ripewood.platform.Actor;

/** Class dates and who comes. */
@ApplicationScoped
public class Sessions {

    /** Sets a class date; instructors of the course and registrars only. */
    public Session set(Actor actor, NewSession session) {
        throw new IllegalStateException("to be built");
    }

    /** A session of a course within reach; 404 otherwise. */
    public Session get(Actor actor, long sessionId) {
        throw new IllegalStateException("to be built");
    }

    /** Sessions of a course from a day on, soonest first, at most 100. */
    public List<Session> ofCourse(Actor actor, long courseId, LocalDate from) {
        throw new IllegalStateException("to be built");
    }

    /** Enrols a student with a tree; 409 when that tree is already enrolled. */
    public Session enrol(Actor actor, long sessionId, NewEnrolment enrolment) {
        throw new IllegalStateException("to be built");
    }

    /** Takes an enrolment back. */
    public Session withdraw(Actor actor, long sessionId, long enrolmentId) {
        throw new IllegalStateException("to be built");
    }
}
