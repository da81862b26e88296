package org.ripewood.materials;

import static java.util.Objects.requireNonNull;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Mix;
import org.ripewood.core.supply.OfferedContainer;
import org.ripewood.core.supply.Substrate;

/** The whole stock in the terms of the arithmetic of materials. */
@ApplicationScoped
class Inventory {

    private final StockRows rows;
    private final MovementRows movements;

    Inventory(StockRows rows, MovementRows movements) {
        this.rows = rows;
        this.movements = movements;
    }

    StockSnapshot on(LocalDate day) {
        var all = rows.all();
        var amounts = movements.amounts(all.stream().map(StockItemEntity::id).toList(), day);
        var substrates =
                of(all, StockKind.SUBSTRATE).stream()
                        .collect(Collectors.toMap(StockItemEntity::id, Inventory::substrate));
        return new StockSnapshot(
                day,
                of(all, StockKind.CONTAINER).stream().map(row -> offered(row, amounts)).toList(),
                of(all, StockKind.SUBSTRATE).stream().map(Inventory::substrate).toList(),
                mixes(of(all, StockKind.MIX), substrates),
                of(all, StockKind.WIRE).stream().map(row -> wire(row, amounts)).toList(),
                tools(of(all, StockKind.TOOL), amounts),
                all.stream()
                        .filter(row -> row.kind != StockKind.MIX)
                        .map(row -> new Held(row.name, amount(row, amounts), row.unit))
                        .toList());
    }

    private static List<StockItemEntity> of(List<StockItemEntity> all, StockKind kind) {
        return all.stream().filter(row -> row.kind == kind).toList();
    }

    private static StockSnapshot.Offered offered(
            StockItemEntity row, Map<Long, BigDecimal> amounts) {
        var container =
                StockViews.sizes(row)
                        .reckon()
                        .find()
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                "no container has the sizes of item " + row.id));
        return new StockSnapshot.Offered(
                requireNonNull(row.usedAs),
                new OfferedContainer(
                        row.id(), row.name, container, amount(row, amounts).intValueExact()));
    }

    static Substrate substrate(StockItemEntity row) {
        return new Substrate(
                row.name,
                StockViews.span(row.dryLow, row.dryHigh),
                StockViews.span(row.capacityLow, row.capacityHigh),
                StockViews.span(row.airLow, row.airHigh),
                row.bagLitres);
    }

    private static Map<String, Mix> mixes(
            List<StockItemEntity> mixes, Map<Long, Substrate> substrates) {
        var byName = new LinkedHashMap<String, Mix>();
        for (var row : mixes) {
            byName.put(
                    row.name,
                    new Mix(
                            row.parts.stream()
                                    .map(
                                            part ->
                                                    new Mix.Part(
                                                            requireNonNull(
                                                                    substrates.get(
                                                                            part.substrateId)),
                                                            part.parts))
                                    .toList()));
        }
        return byName;
    }

    private static StockSnapshot.WireHeld wire(StockItemEntity row, Map<Long, BigDecimal> amounts) {
        return new StockSnapshot.WireHeld(
                requireNonNull(row.metal),
                requireNonNull(row.gaugeMm),
                amount(row, amounts).doubleValue());
    }

    private static Map<String, Integer> tools(
            List<StockItemEntity> tools, Map<Long, BigDecimal> amounts) {
        var counts = new LinkedHashMap<String, Integer>();
        tools.forEach(row -> counts.put(row.name, amount(row, amounts).intValueExact()));
        return counts;
    }

    private static BigDecimal amount(StockItemEntity row, Map<Long, BigDecimal> amounts) {
        return Amounts.plain(amounts.getOrDefault(row.id(), BigDecimal.ZERO));
    }
}
