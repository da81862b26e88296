package org.ripewood.materials;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.problems.Refused;

/** The items kept. */
@ApplicationScoped
class StockRows implements PanacheRepositoryBase<StockItemEntity, Long> {

    private static final String BY_NAME = " order by nameKey, id";

    /** Names are the same however they are spelt: no matter the case, nor the blanks between. */
    static String key(String name) {
        return name.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    List<StockItemEntity> page(@Nullable StockKind kind, PageRequest page) {
        var found =
                kind == null
                        ? find("order by kind, nameKey, id")
                        : find("kind = ?1" + BY_NAME, kind);
        return found.page(page.page(), page.size()).list();
    }

    List<StockItemEntity> all() {
        return list("order by kind, nameKey, id");
    }

    long countOf(@Nullable StockKind kind) {
        return kind == null ? count() : count("kind", kind);
    }

    Map<StockKind, Long> counts() {
        var counts = new EnumMap<StockKind, Long>(StockKind.class);
        getEntityManager()
                .createQuery(
                        "select i.kind, count(i) from StockItemEntity i group by i.kind",
                        Object[].class)
                .getResultList()
                .forEach(row -> counts.put((StockKind) row[0], (Long) row[1]));
        return counts;
    }

    Optional<StockItemEntity> named(StockKind kind, String name) {
        return find("kind = ?1 and nameKey = ?2", kind, key(name)).firstResultOptional();
    }

    StockItemEntity require(long id) {
        return findByIdOptional(id).orElseThrow(() -> Refused.notFound("stock item", id));
    }

    /** The item, and nobody else writes to it until the transaction ends. */
    StockItemEntity requireLocked(long id) {
        var row = findById(id, LockModeType.PESSIMISTIC_WRITE);
        if (row == null) {
            throw Refused.notFound("stock item", id);
        }
        return row;
    }
}
