package org.ripewood.records;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;

@ApplicationScoped
class ObservationRows implements PanacheRepositoryBase<ObservationEntity, Long> {

    /**
     * Entries nobody has corrected. Told this way round because H2 takes the unique index of
     * corrections for the best way to "is null", and reads the entries of the whole school by it.
     */
    static final String IN_FORCE = "coalesce(supersededBy, 0) = 0";

    /** The day each person last saw something of these trees, up to a day. */
    Map<Long, LocalDate> lastBy(
            Collection<Long> personIds, Collection<Long> treeIds, LocalDate until) {
        if (personIds.isEmpty() || treeIds.isEmpty()) {
            return Map.of();
        }
        return getEntityManager()
                .createQuery(
                        """
                        select o.byId, max(o.observedOn) from ObservationEntity o
                        where o.treeId in :trees and o.byId in :persons and coalesce(o.observedOn, :until) <= :until
                        group by o.byId""",
                        Object[].class)
                .setParameter("trees", treeIds)
                .setParameter("persons", personIds)
                .setParameter("until", until)
                .getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (LocalDate) row[1]));
    }

    /** Trees with a wound read as closed, the latest first. */
    List<Long> treesWithClosedWounds(int most) {
        return getEntityManager()
                .createQuery(
                        "select o.treeId from ObservationEntity o where o.woundId is not null and"
                                + " o.numberValue = 0 and coalesce(o.supersededBy, 0) = 0 group by o.treeId"
                                + " order by max(o.observedOn) desc",
                        Long.class)
                .setMaxResults(most)
                .getResultList();
    }

    /** Trees whose shoots an instructor measured since a day, the latest first. */
    List<Long> treesWithShoots(LocalDate since, int most) {
        return getEntityManager()
                .createQuery(
                        """
                        select o.treeId from ObservationEntity o
                        where o.fact = :fact and o.source = :source and o.observedOn >= :since
                        and coalesce(o.supersededBy, 0) = 0
                        group by o.treeId order by max(o.observedOn) desc, o.treeId""",
                        Long.class)
                .setParameter("fact", Fact.SHOOT_EXTENSION_MM.code())
                .setParameter("source", Source.INSTRUCTOR.name())
                .setParameter("since", since)
                .setMaxResults(most)
                .getResultList();
    }
}
