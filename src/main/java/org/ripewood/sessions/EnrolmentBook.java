package org.ripewood.sessions;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The enrolments kept, bench by bench; those withdrawn stay. */
@ApplicationScoped
class EnrolmentBook implements PanacheRepositoryBase<EnrolmentEntity, Long> {

    /** Who comes. */
    List<EnrolmentEntity> of(Collection<Long> sessionIds) {
        return sessionIds.isEmpty()
                ? List.of()
                : list("sessionId in ?1 and withdrawnAt is null order by id", sessionIds).stream()
                        .sorted(
                                Comparator.comparing(
                                        enrolment -> enrolment.bench, BenchOrder.AS_COUNTED))
                        .toList();
    }

    /**
     * The day each person last came to a class up to a day: enrolled and not marked as away, on the
     * day itself only when marked as there.
     */
    Map<Long, LocalDate> lastDay(Collection<Long> personIds, LocalDate until) {
        if (personIds.isEmpty()) {
            return Map.of();
        }
        return getEntityManager()
                .createQuery(
                        """
                        select e.personId, max(s.heldOn) from EnrolmentEntity e, SessionEntity s
                        where s.id = e.sessionId and e.personId in :persons
                        and e.withdrawnAt is null and s.cancelledAt is null
                        and (s.heldOn < :until
                            and not exists (select 1 from RollMarkEntity m
                                where m.sessionId = s.id and m.personId = e.personId
                                and m.markedFor is not null and m.presence = :away)
                            or s.heldOn = :until
                            and exists (select 1 from RollMarkEntity m
                                where m.sessionId = s.id and m.personId = e.personId
                                and m.markedFor is not null and m.presence <> :away))
                        group by e.personId""",
                        Object[].class)
                .setParameter("persons", personIds)
                .setParameter("until", until)
                .setParameter("away", Presence.AWAY)
                .getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (LocalDate) row[1]));
    }

    /** How many trees come. */
    long countOf(long sessionId) {
        return count("sessionId = ?1 and withdrawnAt is null", sessionId);
    }

    /** With which a tree comes. */
    List<EnrolmentEntity> ofTree(long treeId) {
        return list("treeId = ?1 and withdrawnAt is null order by id", treeId);
    }

    /** What one person brings, and what they have withdrawn. */
    List<EnrolmentEntity> ofPerson(long personId, Collection<Long> sessionIds) {
        return sessionIds.isEmpty()
                ? List.of()
                : list("personId = ?1 and sessionId in ?2 order by id", personId, sessionIds);
    }
}
