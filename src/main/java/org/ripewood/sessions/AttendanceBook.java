package org.ripewood.sessions;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.people.Course;
import org.ripewood.people.Courses;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;

/** Class dates as one person has them: those they teach and those of courses they attend. */
@ApplicationScoped
class AttendanceBook {

    private final SessionBook sessions;
    private final EnrolmentBook enrolments;
    private final Courses schoolCourses;

    AttendanceBook(SessionBook sessions, EnrolmentBook enrolments, Courses schoolCourses) {
        this.sessions = sessions;
        this.enrolments = enrolments;
        this.schoolCourses = schoolCourses;
    }

    List<Attendance> of(Actor actor, LocalDate from) {
        var attended =
                schoolCourses.as(actor, Role.STUDENT).stream()
                        .collect(Collectors.toMap(Course::id, Course::name));
        var found = sessions.ofPerson(actor.personId(), attended.keySet(), from);
        var ids = found.stream().map(session -> requireNonNull(session.id)).toList();
        var own =
                enrolments.ofPerson(actor.personId(), ids).stream()
                        .collect(Collectors.groupingBy(enrolment -> enrolment.sessionId));
        var coming = countOf(found, actor.personId());
        var names = schoolCourses.names(found.stream().map(session -> session.courseId).toList());
        return found.stream()
                .map(
                        session ->
                                attendance(
                                        session,
                                        actor.personId(),
                                        names.getOrDefault(session.courseId, ""),
                                        own.getOrDefault(requireNonNull(session.id), List.of()),
                                        coming.getOrDefault(session.id, 0L).intValue()))
                .toList();
    }

    private Map<Long, Long> countOf(Collection<SessionEntity> found, long personId) {
        var taught =
                found.stream()
                        .filter(session -> session.instructorIds.contains(personId))
                        .map(session -> requireNonNull(session.id))
                        .toList();
        return enrolments.of(taught).stream()
                .collect(
                        Collectors.groupingBy(
                                enrolment -> enrolment.sessionId, Collectors.counting()));
    }

    private static Attendance attendance(
            SessionEntity session,
            long personId,
            String course,
            List<EnrolmentEntity> own,
            int trees) {
        var brought =
                own.stream()
                        .filter(enrolment -> enrolment.withdrawnAt == null)
                        .map(enrolment -> enrolment.treeId)
                        .toList();
        var teaches = session.instructorIds.contains(personId);
        return new Attendance(
                session.told(List.of()),
                course,
                teaches,
                brought,
                trees,
                !teaches && brought.isEmpty() && !own.isEmpty());
    }
}
