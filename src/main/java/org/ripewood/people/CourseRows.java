package org.ripewood.people;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;

/** The courses as they are kept. */
@ApplicationScoped
class CourseRows implements PanacheRepositoryBase<CourseEntity, Long> {

    private static final Sort NEWEST_FIRST = Sort.descending("startsOn", "id");

    CourseEntity require(long courseId) {
        return findByIdOptional(courseId).orElseThrow(() -> Refused.notFound("course", courseId));
    }

    /** A course that is not the actor's is told like one that is not there. */
    CourseEntity requireInReach(Actor actor, long courseId) {
        return actor.is(Role.REGISTRAR)
                ? require(courseId)
                : find(
                                "id = ?1 and id in (select m.courseId from MembershipEntity m where"
                                        + " m.personId = ?2 and m.leftOn is null)",
                                courseId,
                                actor.personId())
                        .firstResultOptional()
                        .orElseThrow(() -> Refused.notFound("course", courseId));
    }

    public List<CourseEntity> ofMember(long personId, Role as) {
        return list(
                "id in (select m.courseId from MembershipEntity m where m.personId = ?1 and m.role"
                        + " = ?2 and m.leftOn is null)",
                NEWEST_FIRST,
                personId,
                as);
    }

    /** Courses in reach, newest first, each with what the actor is there, null for neither. */
    List<Object[]> withRole(Actor actor) {
        var among = actor.is(Role.REGISTRAR) ? "" : " where m.id is not null";
        return getEntityManager()
                .createQuery(
                        "select c, m.role from CourseEntity c left join MembershipEntity m on"
                                + " m.courseId = c.id and m.personId = :person and m.leftOn is null"
                                + among
                                + " order by c.startsOn desc, c.id desc",
                        Object[].class)
                .setParameter("person", actor.personId())
                .getResultList();
    }

    public List<CourseEntity> byIds(Collection<Long> ids) {
        return ids.isEmpty() ? List.of() : list("id in ?1", Set.copyOf(ids));
    }

    public List<CourseEntity> inReach(Actor actor) {
        return actor.is(Role.REGISTRAR)
                ? listAll(NEWEST_FIRST)
                : list(
                        "id in (select m.courseId from MembershipEntity m where m.personId = ?1"
                                + " and m.leftOn is null)",
                        NEWEST_FIRST,
                        actor.personId());
    }
}
