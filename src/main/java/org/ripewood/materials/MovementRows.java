package org.ripewood.materials;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ripewood.platform.PageRequest;

/** The movements kept. */
@ApplicationScoped
class MovementRows implements PanacheRepositoryBase<StockMovementEntity, Long> {

    /** Latest first, each with what was left after it. */
    List<Movement> page(long itemId, PageRequest page) {
        return getEntityManager()
                .createQuery(
                        "select m, (select sum(b.amount) from StockMovementEntity b"
                                + " where b.itemId = m.itemId and (b.onDay < m.onDay"
                                + " or b.onDay = m.onDay and b.id <= m.id))"
                                + " from StockMovementEntity m where m.itemId = :item"
                                + " order by m.onDay desc, m.id desc",
                        Object[].class)
                .setParameter("item", itemId)
                .setFirstResult(page.page() * page.size())
                .setMaxResults(page.size())
                .getResultList()
                .stream()
                .map(row -> ((StockMovementEntity) row[0]).told((BigDecimal) row[1]))
                .toList();
    }

    long countOf(long itemId) {
        return count("itemId", itemId);
    }

    /** The day an item was counted last. */
    Optional<LocalDate> lastCount(long itemId) {
        return Optional.ofNullable(
                getEntityManager()
                        .createQuery(
                                "select max(m.onDay) from StockMovementEntity m"
                                        + " where m.itemId = :item and m.kind = :counted",
                                LocalDate.class)
                        .setParameter("item", itemId)
                        .setParameter("counted", MovementKind.COUNTED)
                        .getSingleResult());
    }

    /** What an item changed by on each day. */
    SortedMap<LocalDate, BigDecimal> byDay(long itemId) {
        var days = new TreeMap<LocalDate, BigDecimal>();
        getEntityManager()
                .createQuery(
                        "select m.onDay, sum(m.amount) from StockMovementEntity m"
                                + " where m.itemId = :item group by m.onDay",
                        Object[].class)
                .setParameter("item", itemId)
                .getResultList()
                .forEach(row -> days.put((LocalDate) row[0], (BigDecimal) row[1]));
        return days;
    }

    /** Amounts at the end of a day; items nothing happened to are absent. */
    Map<Long, BigDecimal> amounts(Collection<Long> itemIds, LocalDate day) {
        var amounts = new HashMap<Long, BigDecimal>();
        if (!itemIds.isEmpty()) {
            getEntityManager()
                    .createQuery(
                            "select m.itemId, sum(m.amount) from StockMovementEntity m"
                                    + " where m.itemId in :items and m.onDay <= :day"
                                    + " group by m.itemId",
                            Object[].class)
                    .setParameter("items", itemIds)
                    .setParameter("day", day)
                    .getResultList()
                    .forEach(row -> amounts.put((Long) row[0], (BigDecimal) row[1]));
        }
        return amounts;
    }
}
