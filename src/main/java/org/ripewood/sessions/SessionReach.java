package org.ripewood.sessions;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Optional;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;

/** Which sessions somebody may see, and which they may set. */
@ApplicationScoped
class SessionReach {

    private final SessionBook sessions;
    private final Courses schoolCourses;

    SessionReach(SessionBook sessions, Courses schoolCourses) {
        this.sessions = sessions;
        this.schoolCourses = schoolCourses;
    }

    /** A session of a course within reach; 404 otherwise. */
    SessionEntity reached(Actor actor, long sessionId) {
        return within(actor, sessionId, sessions.findByIdOptional(sessionId));
    }

    /** The same, which nobody else can change until this transaction ends. */
    SessionEntity toChange(Actor actor, long sessionId) {
        var found = sessions.findByIdOptional(sessionId, LockModeType.PESSIMISTIC_WRITE);
        return within(actor, sessionId, found);
    }

    private SessionEntity within(Actor actor, long sessionId, Optional<SessionEntity> found) {
        var session = found.orElseThrow(() -> Refused.notFound("session", sessionId));
        var within =
                schoolCourses.list(actor).stream()
                        .anyMatch(course -> course.id() == session.courseId);
        if (!within) {
            throw Refused.notFound("session", sessionId);
        }
        return session;
    }

    void requireStaff(Actor actor, long courseId) {
        if (!schoolCourses.runs(actor, courseId)) {
            throw Refused.forbidden(
                    "Only instructors of the course and registrars may set its sessions.");
        }
    }
}
