package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The marks kept; those replaced stay. */
@ApplicationScoped
class RollMarks implements PanacheRepositoryBase<RollMarkEntity, Long> {

    private static final int MOST_OF_PERSON = 100;

    /** Marks in force of a session, by person. */
    Map<Long, RollMarkEntity> of(long sessionId) {
        return list("sessionId = ?1 and markedFor is not null order by id", sessionId).stream()
                .collect(Collectors.toMap(mark -> mark.personId, Function.identity()));
    }

    /** What is marked of a person, latest class first. */
    List<ClassAttended> ofPerson(long personId) {
        return getEntityManager()
                .createQuery(
                        """
                        select new org.ripewood.sessions.ClassAttended(
                            s.id, s.courseId, s.heldOn, s.lesson, m.presence)
                        from RollMarkEntity m, SessionEntity s
                        where s.id = m.sessionId and m.personId = :person
                        and m.markedFor is not null
                        order by s.heldOn desc, s.startsAt desc, s.id desc""",
                        ClassAttended.class)
                .setParameter("person", personId)
                .setMaxResults(MOST_OF_PERSON)
                .getResultList();
    }
}
