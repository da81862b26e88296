package org.ripewood.materials;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Objects;
import org.hibernate.exception.ConstraintViolationException;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Writes down what items are. Called within the façade's transaction. */
@ApplicationScoped
class StockWriter {

    private final StockRows rows;
    private final MovementRows movements;
    private final Recipes recipes;
    private final Today today;

    StockWriter(StockRows rows, MovementRows movements, Recipes recipes, Today today) {
        this.rows = rows;
        this.movements = movements;
        this.recipes = recipes;
        this.today = today;
    }

    StockItemEntity enter(Actor actor, NewStock stock) {
        var row = new StockItemEntity();
        row.kind = stock.kind();
        return write(actor, row, stock);
    }

    /** Says anew what an item is; of another kind it never becomes. */
    StockItemEntity change(Actor actor, long id, long version, NewStock stock) {
        var row = rows.requireLocked(id);
        if (row.kind != stock.kind()) {
            throw Refused.notFound(stock.kind().word(), id);
        }
        if (row.version != version) {
            throw Refused.stale(stock.kind().word());
        }
        if (stock instanceof NewStockSupply supply
                && !supply.unit().strip().equals(row.unit)
                && movements.countOf(id) > 0) {
            throw Refused.invalid(
                    "unit",
                    "expected %s, which its amounts are written down in, found %s. Maybe enter a new supply."
                            .formatted(row.unit, supply.unit().strip()));
        }
        return write(actor, row, stock);
    }

    private StockItemEntity write(Actor actor, StockItemEntity row, NewStock stock) {
        var name = stock.name().strip();
        // asked before the row is touched, since a query writes what was
        rows.named(row.kind, name)
                .filter(other -> !Objects.equals(other.id, row.id))
                .ifPresent(
                        other -> {
                            throw taken(row.kind, other.name);
                        });
        describe(row, stock);
        row.name = name;
        row.nameKey = StockRows.key(name);
        row.changedById = actor.personId();
        row.changedAt = today.now();
        try {
            rows.persistAndFlush(row);
        } catch (ConstraintViolationException quicker) {
            throw taken(row.kind, name);
        }
        return row;
    }

    private static Refused taken(StockKind kind, String name) {
        return Refused.conflict(
                "There is a %s “%s” already.".formatted(kind.word(), name),
                "Maybe count that one, or give this one another name.");
    }

    private void describe(StockItemEntity row, NewStock stock) {
        row.unit = stock.kind().unit();
        if (stock instanceof NewStockContainer container) {
            ContainerTyped.describe(row, container);
        } else if (stock instanceof NewStockSubstrate substrate) {
            SubstrateTyped.describe(row, substrate);
        } else if (stock instanceof NewStockMix mix) {
            recipes.describe(row, mix);
        } else if (stock instanceof NewStockWire wire) {
            row.metal = wire.metal();
            row.gaugeMm = wire.gaugeMm();
        } else if (stock instanceof NewStockSupply supply) {
            row.unit = supply.unit().strip();
        }
    }
}
