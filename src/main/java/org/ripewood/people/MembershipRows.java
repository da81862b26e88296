package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ripewood.platform.Role;

/** Who belongs to which course, as it is kept. */
@ApplicationScoped
class MembershipRows implements PanacheRepositoryBase<MembershipEntity, Long> {

    private static final String CURRENT = "courseId = ?1 and personId = ?2 and leftOn is null";

    /** Everybody who belongs to one of the courses or did, in the order they came. */
    List<MembershipEntity> ofCourses(Collection<Long> courseIds) {
        return courseIds.isEmpty()
                ? List.of()
                : list("courseId in ?1 order by joinedOn, id", courseIds);
    }

    /** The same, each with the person's name in the second place. */
    List<Object[]> named(Collection<Long> courseIds) {
        return courseIds.isEmpty()
                ? List.of()
                : getEntityManager()
                        .createQuery(
                                "select m, p.name from MembershipEntity m join PersonEntity p on"
                                        + " p.id = m.personId where m.courseId in :courses order by"
                                        + " m.joinedOn, m.id",
                                Object[].class)
                        .setParameter("courses", courseIds)
                        .getResultList();
    }

    /** The membership that lasts, if one does. */
    Optional<MembershipEntity> of(long courseId, long personId) {
        return find(CURRENT, courseId, personId).firstResultOptional();
    }

    /** Those of these courses that a person belongs to. */
    Set<Long> coursesOf(long personId, Collection<Long> courseIds) {
        return list("personId = ?1 and courseId in ?2 and leftOn is null", personId, courseIds)
                .stream()
                .map(membership -> membership.courseId)
                .collect(Collectors.toSet());
    }

    /** Whether one teaches a course that the other attends. */
    boolean teaches(long instructorId, long studentId) {
        return count(
                        "personId = ?1 and role = ?2 and leftOn is null and courseId in (select"
                                + " t.courseId from MembershipEntity t where t.personId = ?3 and"
                                + " t.role = ?4 and t.leftOn is null)",
                        studentId,
                        Role.STUDENT,
                        instructorId,
                        Role.INSTRUCTOR)
                > 0;
    }

    List<Long> studentsOf(long instructorId) {
        return getEntityManager()
                .createQuery(
                        "select distinct s.personId from MembershipEntity s where s.role ="
                                + " :student and s.leftOn is null and s.courseId in (select"
                                + " t.courseId from MembershipEntity t where t.personId ="
                                + " :instructor and t.role = :teaching and t.leftOn is null) order"
                                + " by s.personId",
                        Long.class)
                .setParameter("student", Role.STUDENT)
                .setParameter("instructor", instructorId)
                .setParameter("teaching", Role.INSTRUCTOR)
                .getResultList();
    }
}
