package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.people.Roster;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Class dates and who comes. */
@ApplicationScoped
public class Sessions {

    private final SessionBook sessions;
    private final EnrolmentBook enrolments;
    private final WaitBook waits;
    private final SessionPlaces sessionPlaces;
    private final AttendanceBook attendances;
    private final TreePlaces places;
    private final SessionReach reach;
    private final SessionChecks checks;
    private final Courses schoolCourses;
    private final Today today;

    Sessions(
            SessionBook sessions,
            EnrolmentBook enrolments,
            WaitBook waits,
            SessionPlaces sessionPlaces,
            AttendanceBook attendances,
            TreePlaces places,
            SessionReach reach,
            SessionChecks checks,
            Courses schoolCourses,
            Today today) {
        this.sessions = sessions;
        this.enrolments = enrolments;
        this.waits = waits;
        this.sessionPlaces = sessionPlaces;
        this.attendances = attendances;
        this.places = places;
        this.reach = reach;
        this.checks = checks;
        this.schoolCourses = schoolCourses;
        this.today = today;
    }

    /** Sets a class date; instructors of the course and registrars only. */
    @Transactional
    public Session set(Actor actor, NewSession session) {
        schoolCourses.get(actor, session.courseId());
        reach.requireStaff(actor, session.courseId());
        checks.check(session);
        checks.checkOverlap(session, sessions.on(session.heldOn()));
        var entity = SessionEntity.of(session, today.now());
        sessions.persistAndFlush(entity);
        return entity.told(List.of());
    }

    /** A session of a course within reach; 404 otherwise. A student sees their own enrolments. */
    @Transactional
    public Session get(Actor actor, long sessionId) {
        return told(actor, reach.reached(actor, sessionId));
    }

    /** Sessions of a course from a day on, soonest first, at most 100. */
    @Transactional
    public List<Session> ofCourse(Actor actor, long courseId, LocalDate from) {
        return of(actor, schoolCourses.roster(actor, courseId), from);
    }

    /** The same of a course whose members were just read. */
    @Transactional
    public List<Session> of(Actor actor, Roster roster, LocalDate from) {
        var courses = Set.of(roster.course().id());
        return told(actor, sessions.ofCourses(courses, from), roster.runs() ? courses : Set.of());
    }

    /**
     * Sessions of courses within reach that were just read, from a day on, soonest first, at most
     * 100; without who comes. In a number of queries that does not depend on how many.
     */
    @Transactional
    public List<Session> of(Collection<Course> reached, LocalDate from) {
        return sessions.ofCourses(reached.stream().map(Course::id).toList(), from).stream()
                .map(session -> session.told(List.of()))
                .toList();
    }

    /**
     * @param runs courses that the actor runs: of all others they see their own enrolments
     */
    private List<Session> told(Actor actor, List<SessionEntity> found, Set<Long> runs) {
        var seesAll =
                found.stream()
                        .filter(session -> runs.contains(session.courseId))
                        .map(session -> session.id)
                        .collect(Collectors.toSet());
        var bySession =
                enrolments.of(found.stream().map(session -> session.id).toList()).stream()
                        .filter(
                                enrolment ->
                                        seesAll.contains(enrolment.sessionId)
                                                || enrolment.personId == actor.personId())
                        .collect(
                                Collectors.groupingBy(
                                        enrolment -> enrolment.sessionId,
                                        Collectors.mapping(
                                                EnrolmentEntity::told, Collectors.toList())));
        return found.stream()
                .map(
                        session ->
                                session.told(
                                        bySession.getOrDefault(
                                                requireNonNull(session.id), List.of())))
                .toList();
    }

    /**
     * Class dates of the actor from a day on, soonest first, at most 500: those they teach and
     * those of courses they attend, called off or not. In a number of queries that does not depend
     * on how many.
     */
    @Transactional
    public List<Attendance> ofPerson(Actor actor, LocalDate from) {
        return attendances.of(actor, from);
    }

    /**
     * Class dates that have not begun and to which a tree within reach is to come, soonest first;
     * without who else comes.
     */
    @Transactional
    public List<Session> aheadOf(Actor actor, long treeId) {
        return places.ahead(actor, treeId);
    }

    /**
     * The day each person last came to a class up to a day: was enrolled and not marked as away; on
     * that day itself only who is marked as there. Those who never did are absent. One query; no
     * reach is asked.
     */
    @Transactional
    public Map<Long, LocalDate> lastAttended(Collection<Long> personIds, LocalDate until) {
        return enrolments.lastDay(personIds, until);
    }

    /**
     * Calls a class date off, with a reason; it stays in the record. Said again with the same
     * reason it counts once; with another it is refused, since people have been told the first.
     *
     * @throws Refused 412 when the session was changed since that version; not when it is called
     *     off already
     */
    @Transactional
    public Session cancel(Actor actor, long sessionId, long version, NewCancellation cancellation) {
        var session = reach.reached(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        var reason = cancellation.reason().strip();
        if (session.cancelledAt == null) {
            if (session.version != version) {
                throw Refused.stale("session");
            }
            session.cancelledAt = today.now();
            session.cancelledById = actor.personId();
            session.cancelledBecause = reason;
            session.changedAt = today.now();
            sessions.flush();
        } else if (!reason.equals(session.cancelledBecause)) {
            throw Refused.conflict(
                    "The session is cancelled already: " + session.cancelledBecause, null);
        }
        return told(actor, session);
    }

    /**
     * Enrols a student with a tree; they wait when every place is taken. 409 when that tree is
     * already enrolled or waits, or the session is called off.
     */
    @Transactional
    public Session enrol(Actor actor, long sessionId, NewEnrolment enrolment) {
        var session = reach.toChange(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        checks.check(actor, session, enrolment);
        requireHeld(session);
        if (comesOrWaits(sessionId, enrolment.treeId())) {
            throw alreadyEnrolled(enrolment);
        }
        var bench = enrolment.bench().strip();
        sessionPlaces.take(
                session,
                List.of(new SessionPlaces.Asking(enrolment.personId(), enrolment.treeId(), bench)));
        markChanged(session);
        return told(actor, session);
    }

    private boolean comesOrWaits(long sessionId, long treeId) {
        return enrolments.count("sessionId = ?1 and comingTreeId = ?2", sessionId, treeId) > 0
                || waits.of(sessionId).stream().anyMatch(wait -> wait.treeId == treeId);
    }

    /**
     * Enrols trees with their keepers, those named or all of the course's students, at the lowest
     * free bench numbers, by the students' names. Those for whom there is no place wait. Trees that
     * come or wait already are passed over, so that what is sent again changes nothing. All or
     * nothing: 400 names every tree that no student of the course keeps.
     */
    @Transactional
    public Session enrolMany(Actor actor, long sessionId, NewEnrolments wanted) {
        var session = reach.toChange(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        requireHeld(session);
        if (sessionPlaces.take(session, checks.asking(session.courseId, wanted.treeIds()))) {
            markChanged(session);
        }
        return told(actor, session);
    }

    /** Takes an enrolment back; that there was one is remembered. Who waits longest moves up. */
    @Transactional
    public Session withdraw(Actor actor, long sessionId, long enrolmentId) {
        var session = reach.toChange(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        var enrolment =
                enrolments
                        .find(
                                "id = ?1 and sessionId = ?2 and withdrawnAt is null",
                                enrolmentId,
                                sessionId)
                        .firstResultOptional()
                        .orElseThrow(() -> Refused.notFound("enrolment", enrolmentId));
        enrolment.withdraw(today.now());
        enrolments.flush();
        sessionPlaces.moveUp(session);
        markChanged(session);
        return told(actor, session);
    }

    /** Ends a wait; that there was one is remembered. */
    @Transactional
    public Session endWait(Actor actor, long sessionId, long waitId) {
        var session = reach.toChange(actor, sessionId);
        reach.requireStaff(actor, session.courseId);
        var wait =
                waits.find("id = ?1 and sessionId = ?2 and endedAt is null", waitId, sessionId)
                        .firstResultOptional()
                        .orElseThrow(() -> Refused.notFound("wait", waitId));
        wait.end(today.now());
        markChanged(session);
        return told(actor, session);
    }

    private Session told(Actor actor, SessionEntity session) {
        var id = requireNonNull(session.id);
        var seesAll = schoolCourses.runs(actor, session.courseId);
        return session.told(
                enrolments.of(List.of(id)).stream()
                        .filter(enrolment -> seesAll || enrolment.personId == actor.personId())
                        .map(EnrolmentEntity::told)
                        .toList(),
                waits.of(id).stream()
                        .filter(wait -> seesAll || wait.personId == actor.personId())
                        .map(WaitEntity::told)
                        .toList());
    }

    /** Who comes is part of the session, so a session read before is stale afterwards. */
    private void markChanged(SessionEntity session) {
        session.changedAt = today.now();
        sessions.flush();
    }

    /** 409 for a session that is called off. */
    static void requireHeld(SessionEntity session) {
        if (session.cancelledAt != null) {
            throw Refused.conflict(
                    "The session is cancelled: " + session.cancelledBecause,
                    "Maybe another session was meant.");
        }
    }

    private static Refused alreadyEnrolled(NewEnrolment enrolment) {
        return Refused.conflict(
                "Tree %d is already enrolled in this session.".formatted(enrolment.treeId()),
                "Maybe remove it there first.");
    }
}
