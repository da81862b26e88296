package org.ripewood.materials;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** What mixes are made of. */
@ApplicationScoped
class Recipes {

    private final StockRows rows;

    Recipes(StockRows rows) {
        this.rows = rows;
    }

    void describe(StockItemEntity row, NewStockMix mix) {
        var parts = new ArrayList<MixPart>();
        var faults = new ArrayList<Fault>();
        mix.parts()
                .forEach(
                        (id, count) ->
                                substrate(id)
                                        .ifPresentOrElse(
                                                one -> parts.add(new MixPart(one.id(), count)),
                                                () -> faults.add(unknown(id))));
        if (!faults.isEmpty()) {
            throw Refused.invalid(faults);
        }
        row.parts.clear();
        row.parts.addAll(parts);
    }

    private static Fault unknown(String id) {
        return new Fault("parts", "expected ids of substrates in stock, found “%s”".formatted(id));
    }

    private Optional<StockItemEntity> substrate(String id) {
        return id.matches("[1-9][0-9]{0,17}")
                ? rows.findByIdOptional(Long.valueOf(id))
                        .filter(row -> row.kind == StockKind.SUBSTRATE)
                : Optional.empty();
    }

    /** The substrates that mixes are made of, by id. */
    Map<Long, StockItemEntity> substratesOf(Collection<StockItemEntity> mixes) {
        var ids =
                mixes.stream()
                        .flatMap(mix -> mix.parts.stream())
                        .map(part -> part.substrateId)
                        .distinct()
                        .toList();
        var byId = new HashMap<Long, StockItemEntity>();
        if (!ids.isEmpty()) {
            rows.list("id in ?1", ids).forEach(row -> byId.put(row.id(), row));
        }
        return byId;
    }
}
