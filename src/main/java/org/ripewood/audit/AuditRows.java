package org.ripewood.audit;

import io.quarkus.hibernate.orm.panache.PanacheQuery;
import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Entries as they are kept, the latest first. */
@ApplicationScoped
class AuditRows implements PanacheRepositoryBase<AuditEntryEntity, Long> {

    PanacheQuery<AuditEntryEntity> asked(AuditQuestion question, ZoneId zone) {
        var wanted = new ArrayList<String>();
        var values = new HashMap<String, Object>();
        wanted.add("id > 0");
        if (question.personId() != null) {
            wanted.add("personId = :person");
            values.put("person", question.personId());
        }
        if (question.from() != null) {
            wanted.add("happenedAt >= :from");
            values.put("from", start(question.from(), zone));
        }
        if (question.to() != null) {
            wanted.add("happenedAt < :to");
            values.put("to", start(question.to().plusDays(1), zone));
        }
        if (question.thing() != null) {
            wanted.add(
                    "id in (select c.place.entryId from AuditChangeEntity c where c.thing ="
                            + " :thing)");
            values.put("thing", question.thing());
        }
        return find(String.join(" and ", wanted) + " order by id desc", values);
    }

    Optional<AuditEntryEntity> latestOf(String thing, long id) {
        return find(
                        "id = (select max(c.place.entryId) from AuditChangeEntity c where c.thing ="
                                + " ?1 and c.firstId <= ?2 and c.lastId >= ?2)",
                        thing,
                        id)
                .firstResultOptional();
    }

    private static java.time.Instant start(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }

    Map<Long, List<Change>> changes(Collection<Long> entryIds) {
        return entryIds.isEmpty()
                ? Map.of()
                : getEntityManager()
                        .createQuery(
                                "from AuditChangeEntity c where c.place.entryId in :ids order by"
                                        + " c.place.entryId, c.place.position",
                                AuditChangeEntity.class)
                        .setParameter("ids", entryIds)
                        .getResultList()
                        .stream()
                        .collect(
                                Collectors.groupingBy(
                                        change -> change.place.entryId(),
                                        Collectors.mapping(
                                                AuditChangeEntity::toRecord, Collectors.toList())));
    }
}
