package org.ripewood.materials;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Writes down what came, went or was counted. Called within the façade's transaction. */
@ApplicationScoped
class Ledger {

    /** Older than any record a school has; an earlier day is a slip of the pen. */
    private static final LocalDate FIRST = LocalDate.of(1900, 1, 1);

    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private final MovementRows rows;
    private final Today today;

    Ledger(MovementRows rows, Today today) {
        this.rows = rows;
        this.today = today;
    }

    /**
     * Adds a movement to a locked item.
     *
     * @throws Refused 400 when there would be less than nothing on that day or on a later one, or
     *     the day lies before the last count
     */
    void add(Actor actor, StockItemEntity item, NewMovement movement) {
        if (item.kind == StockKind.MIX) {
            throw Refused.invalid(
                    "kind", "a mix is a recipe and has no amount; move its substrates instead");
        }
        requireDay(item, movement.on());
        var typed = Amounts.typed(item, movement.amount());
        var row = new StockMovementEntity();
        row.itemId = item.id();
        row.kind = movement.kind();
        row.amount = change(item, movement, typed);
        row.onDay = movement.on();
        row.note = movement.note();
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persist(row);
    }

    private void requireDay(StockItemEntity item, LocalDate on) {
        if (on.isBefore(FIRST) || on.isAfter(today.last())) {
            throw Refused.invalid(
                    "on",
                    "expected a day from %s to %s, found %s".formatted(FIRST, today.last(), on));
        }
        rows.lastCount(item.id())
                .filter(on::isBefore)
                .ifPresent(
                        counted -> {
                            throw Refused.invalid(
                                    "on",
                                    "it was counted on %s, and what happened before is in that count; found %s"
                                            .formatted(DAY.format(counted), DAY.format(on)));
                        });
    }

    private BigDecimal change(StockItemEntity item, NewMovement movement, BigDecimal typed) {
        var byDay = rows.byDay(item.id());
        var before = sum(byDay.headMap(movement.on().plusDays(1)).values());
        var change =
                switch (movement.kind()) {
                    case RECEIVED -> aboveNothing(typed);
                    case TAKEN -> aboveNothing(typed).negate();
                    case COUNTED -> typed.subtract(before);
                };
        var left = before.add(change);
        if (left.signum() < 0) {
            throw Refused.invalid(
                    "amount",
                    "%s %s cannot be taken: on %s there were %s. Maybe count it again first."
                            .formatted(
                                    said(typed),
                                    item.unit,
                                    DAY.format(movement.on()),
                                    said(before)));
        }
        for (var later : byDay.tailMap(movement.on().plusDays(1)).entrySet()) {
            left = left.add(later.getValue());
            if (left.signum() < 0) {
                throw Refused.invalid(
                        "amount",
                        "with that there would have been %s %s on %s, after what is on record since. Maybe count it again first."
                                .formatted(said(left), item.unit, DAY.format(later.getKey())));
            }
        }
        return change;
    }

    private static BigDecimal aboveNothing(BigDecimal typed) {
        if (typed.signum() == 0) {
            throw Refused.invalid("amount", "expected more than 0, found 0");
        }
        return typed;
    }

    private static String said(BigDecimal amount) {
        return Amounts.plain(amount).toPlainString();
    }

    private static BigDecimal sum(Iterable<BigDecimal> amounts) {
        var sum = BigDecimal.ZERO;
        for (var amount : amounts) {
            sum = sum.add(amount);
        }
        return sum;
    }
}
