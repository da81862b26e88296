package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Problem;
import org.ripewood.platform.problems.Refused;

/** Several sessions set at once, and sessions moved. */
@ApplicationScoped
@Transactional
public class SessionPlanning {

    private final SessionBook sessions;
    private final EnrolmentBook enrolments;
    private final SessionPlaces places;
    private final SessionReach reach;
    private final Sessions whole;
    private final SessionChecks checks;
    private final Courses schoolCourses;
    private final Today today;

    SessionPlanning(
            SessionBook sessions,
            EnrolmentBook enrolments,
            SessionPlaces places,
            SessionReach reach,
            Sessions whole,
            SessionChecks checks,
            Courses schoolCourses,
            Today today) {
        this.sessions = sessions;
        this.enrolments = enrolments;
        this.places = places;
        this.reach = reach;
        this.whole = whole;
        this.checks = checks;
        this.schoolCourses = schoolCourses;
        this.today = today;
    }

    /**
     * Sets sessions of a course, all or none, soonest first; instructors of the course and
     * registrars only. 400 names every day that cannot be, 409 every day on which an instructor
     * teaches elsewhere. Trees of a session that is copied come as well while their keepers attend
     * the course; those for whom there is no place wait.
     */
    public List<Session> setAll(Actor actor, long courseId, NewSessions wanted) {
        schoolCourses.get(actor, courseId);
        reach.requireStaff(actor, courseId);
        var copied = copied(courseId, wanted.like());
        refuseTwice(wanted.days());
        var days = wanted.days().stream().sorted().toList();
        checks.check(courseId, wanted);
        refuseOverlaps(courseId, wanted);
        var asking = copied == null ? List.<SessionPlaces.Asking>of() : asking(copied);
        var set = new ArrayList<Session>();
        for (var day : days) {
            var session = SessionEntity.of(wanted.on(courseId, day), today.now());
            sessions.persist(session);
            places.take(session, asking);
            set.add(session.told(List.of()));
        }
        sessions.flush();
        return set;
    }

    /**
     * Why each of these days cannot be, in a sentence, or null: on it an instructor teaches
     * elsewhere at that time. For a look before they are set; in two queries.
     */
    public List<@Nullable String> clashes(Actor actor, long courseId, NewSessions wanted) {
        schoolCourses.get(actor, courseId);
        reach.requireStaff(actor, courseId);
        return clashes(courseId, wanted);
    }

    /**
     * The session of a course that a new one is copied from, with who comes: that one, or else the
     * latest that is not cancelled; null when the course has none.
     *
     * @param like passed over when it is not one of the course
     */
    public @Nullable Session toCopy(Actor actor, long courseId, @Nullable Long like) {
        schoolCourses.get(actor, courseId);
        reach.requireStaff(actor, courseId);
        var named = like == null ? null : sessions.findById(like);
        var found = named != null && named.courseId == courseId ? named : sessions.latest(courseId);
        return found == null ? null : whole.get(actor, requireNonNull(found.id));
    }

    /**
     * Moves a session that has not begun to another day, time or place, or gives it another number
     * of places. Who comes stays enrolled, and what it was before is told. Nothing is remembered
     * when neither day, time nor place changes.
     *
     * @throws Refused 412 for another version than the current one; 409 when the session has begun
     *     or is cancelled, or an instructor teaches elsewhere then; 400 for fewer places than trees
     *     that come
     */
    public Session move(Actor actor, long sessionId, long version, NewMove to) {
        var session = reach.toChange(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        if (session.version != version) {
            throw Refused.stale("session");
        }
        requireAhead(session);
        requirePlaces(sessionId, to);
        var then = asSet(session, to);
        checks.check(then);
        requireNotBegun(then);
        checks.checkOverlap(
                then,
                sessions.on(to.heldOn()).stream()
                        .filter(other -> !requireNonNull(other.id).equals(sessionId))
                        .toList());
        become(actor, session, to);
        places.moveUp(session);
        sessions.flush();
        return whole.get(actor, sessionId);
    }

    private void become(Actor actor, SessionEntity session, NewMove to) {
        var stays =
                session.heldOn.equals(to.heldOn())
                        && session.startsAt.equals(to.startsAt())
                        && session.endsAt.equals(to.endsAt())
                        && session.place.equals(to.place().strip());
        if (!stays) {
            var because = to.because() == null || to.because().isBlank() ? null : to.because();
            session.rememberMove(actor.personId(), today.now(), because);
        }
        session.heldOn = to.heldOn();
        session.startsAt = to.startsAt();
        session.endsAt = to.endsAt();
        session.place = to.place().strip();
        session.places = to.places();
        session.changedAt = today.now();
    }

    private static NewSession asSet(SessionEntity session, NewMove to) {
        return new NewSession(
                session.courseId,
                to.heldOn(),
                to.startsAt(),
                to.endsAt(),
                session.lesson,
                to.place(),
                List.copyOf(session.instructorIds),
                to.places());
    }

    private @Nullable SessionEntity copied(long courseId, @Nullable Long like) {
        if (like == null) {
            return null;
        }
        var session = sessions.findById(like);
        if (session == null || session.courseId != courseId) {
            throw Refused.invalid("like", "Session %d is not one of this course.".formatted(like));
        }
        return session;
    }

    /** Trees that come to a session and may still come to another of its course. */
    private List<SessionPlaces.Asking> asking(SessionEntity session) {
        var kept = places.treesOfCourse(session.courseId);
        return enrolments.of(List.of(requireNonNull(session.id))).stream()
                .filter(one -> kept.containsKey(one.treeId))
                .map(
                        one ->
                                new SessionPlaces.Asking(
                                        requireNonNull(kept.get(one.treeId)).keeperId(),
                                        one.treeId,
                                        one.bench))
                .toList();
    }

    private static void refuseTwice(List<LocalDate> days) {
        var named = new HashSet<LocalDate>();
        var faults = new ArrayList<Fault>();
        for (int i = 0; i < days.size(); i++) {
            if (!named.add(days.get(i))) {
                faults.add(
                        new Fault(
                                "days[%d]".formatted(i),
                                "%s is named twice.".formatted(days.get(i))));
            }
        }
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
    }

    private List<@Nullable String> clashes(long courseId, NewSessions wanted) {
        var taken = sessions.on(wanted.days());
        var found = new ArrayList<@Nullable String>();
        wanted.days().forEach(day -> found.add(checks.overlap(wanted.on(courseId, day), taken)));
        return found;
    }

    private void refuseOverlaps(long courseId, NewSessions wanted) {
        var faults = new ArrayList<Fault>();
        var found = clashes(courseId, wanted);
        for (int i = 0; i < found.size(); i++) {
            var clash = found.get(i);
            if (clash != null) {
                faults.add(new Fault("days[%d]".formatted(i), clash));
            }
        }
        if (!faults.isEmpty()) {
            throw new Refused(
                    new Problem(
                            409,
                            "conflict",
                            "Not possible as things stand",
                            "An instructor teaches elsewhere on some of these days. No session was"
                                    + " set.",
                            "Maybe leave these days out, or choose another time.",
                            faults));
        }
    }

    private void requirePlaces(long sessionId, NewMove to) {
        var coming = enrolments.countOf(sessionId);
        if (to.places() != null && to.places() < coming) {
            throw Refused.invalid(
                    "places",
                    "Expected %d or more, since so many trees come; found %d."
                            .formatted(coming, to.places()));
        }
    }

    private void requireAhead(SessionEntity session) {
        Sessions.requireHeld(session);
        if (!places.ahead(session)) {
            throw Refused.conflict(
                    "The session of %s has begun; it stays as it is.".formatted(session.heldOn),
                    "Maybe set another session.");
        }
    }

    private void requireNotBegun(NewSession then) {
        if (!places.ahead(SessionEntity.of(then, today.now()))) {
            throw Refused.invalid(
                    "heldOn",
                    "Expected a day and time ahead, found %s %s."
                            .formatted(then.heldOn(), then.startsAt()));
        }
    }
}
