package org.ripewood.materials;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.platform.Role;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * The school's stock. All of it is for instructors and registrars; how much there is of an item is
 * the sum of its movements, none of which is ever changed.
 */
@ApplicationScoped
@Transactional
public class Materials {

    private final StockRows rows;
    private final MovementRows movements;
    private final StockWriter shelf;
    private final Ledger ledger;
    private final Recipes recipes;
    private final Inventory inventory;
    private final Today today;

    Materials(
            StockRows rows,
            MovementRows movements,
            StockWriter shelf,
            Ledger ledger,
            Recipes recipes,
            Inventory inventory,
            Today today) {
        this.rows = rows;
        this.movements = movements;
        this.shelf = shelf;
        this.ledger = ledger;
        this.recipes = recipes;
        this.inventory = inventory;
        this.today = today;
    }

    /** Items of a kind, or of every kind when it is null; by kind and name. */
    public Paged<StockItem> list(Actor actor, @Nullable StockKind kind, PageRequest page) {
        requireKeeper(actor, "see the stock");
        return Paged.of(told(rows.page(kind, page)), page, rows.countOf(kind));
    }

    /** How many items there are of each kind; a kind without any is absent. */
    public Map<StockKind, Long> counts(Actor actor) {
        requireKeeper(actor, "see the stock");
        return rows.counts();
    }

    /** An item; 404 when there is none. */
    public StockItem get(Actor actor, long id) {
        requireKeeper(actor, "see the stock");
        return told(rows.require(id));
    }

    /** An item of that kind by its name, however it is spelt. */
    public Optional<StockItem> findByName(Actor actor, StockKind kind, String name) {
        requireKeeper(actor, "see the stock");
        return rows.named(kind, name).map(this::told);
    }

    /**
     * Enters an item.
     *
     * @param counted how much of it was found today; null when nobody counted, which is 0
     * @throws Refused 409 when there is one of that kind and name
     */
    public StockItem enter(Actor actor, NewStock stock, @Nullable Double counted) {
        requireKeeper(actor, "enter stock");
        var row = shelf.enter(actor, stock);
        if (counted != null) {
            ledger.add(
                    actor, row, new NewMovement(MovementKind.COUNTED, counted, today.date(), null));
        }
        return told(row);
    }

    /**
     * Says anew what an item is. Its amount stays.
     *
     * @param version the version this is a change to; 412 when it has changed since
     */
    public StockItem change(Actor actor, long id, long version, NewStock stock) {
        requireKeeper(actor, "change stock");
        return told(shelf.change(actor, id, version, stock));
    }

    /** Adds what came, what went or what was counted. */
    public StockItem move(Actor actor, long id, NewMovement movement) {
        requireKeeper(actor, "move stock");
        var row = rows.requireLocked(id);
        ledger.add(actor, row, movement);
        return told(row);
    }

    /** What became of an item, latest first. */
    public Paged<Movement> movements(Actor actor, long id, PageRequest page) {
        requireKeeper(actor, "see the stock");
        rows.require(id);
        return Paged.of(movements.page(id, page), page, movements.countOf(id));
    }

    /** Everything there is at the end of a day; of a day to come, what there is by now. */
    public StockSnapshot stockOn(Actor actor, LocalDate day) {
        requireKeeper(actor, "see the stock");
        return inventory.on(day);
    }

    /** The stock is the school's, so whoever teaches or keeps the register may put it right. */
    private static void requireKeeper(Actor actor, String what) {
        if (!actor.is(Role.REGISTRAR)) {
            actor.require(Role.INSTRUCTOR, what);
        }
    }

    private StockItem told(StockItemEntity row) {
        return told(List.of(row)).get(0);
    }

    private List<StockItem> told(List<StockItemEntity> items) {
        var amounts =
                movements.amounts(items.stream().map(StockItemEntity::id).toList(), today.date());
        var substrates = recipes.substratesOf(items);
        return items.stream()
                .map(
                        row ->
                                StockViews.item(
                                        row,
                                        amounts.getOrDefault(row.id(), BigDecimal.ZERO),
                                        substrates))
                .toList();
    }
}
