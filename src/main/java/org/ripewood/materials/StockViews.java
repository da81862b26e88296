package org.ripewood.materials;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.ContainerSizes;
import org.ripewood.core.supply.Span;

/** Items as they are told outside the room. */
final class StockViews {

    private StockViews() {}

    /**
     * @param substrates those a mix is made of, by id
     */
    static StockItem item(
            StockItemEntity row, BigDecimal amount, Map<Long, StockItemEntity> substrates) {
        return new StockItem(
                row.id(),
                row.version,
                row.kind,
                row.name,
                row.unit,
                Amounts.plain(amount),
                detail(row, substrates),
                row.changedById,
                row.changedAt);
    }

    private static StockDetail detail(StockItemEntity row, Map<Long, StockItemEntity> substrates) {
        return switch (row.kind) {
            case CONTAINER ->
                    new StockDetail.Container(
                            requireNonNull(row.usedAs), row.material, sizes(row), row.massKg);
            case SUBSTRATE ->
                    new StockDetail.Substrate(
                            span(row.dryLow, row.dryHigh),
                            span(row.capacityLow, row.capacityHigh),
                            span(row.airLow, row.airHigh),
                            row.bagLitres);
            case MIX ->
                    new StockDetail.Mix(
                            row.parts.stream()
                                    .map(
                                            part ->
                                                    new StockDetail.Part(
                                                            part.substrateId,
                                                            requireNonNull(
                                                                            substrates.get(
                                                                                    part.substrateId))
                                                                    .name,
                                                            part.parts))
                                    .toList());
            case WIRE ->
                    new StockDetail.Wire(requireNonNull(row.metal), requireNonNull(row.gaugeMm));
            case TOOL, SUPPLY -> new StockDetail.Plain();
        };
    }

    static ContainerSizes sizes(StockItemEntity row) {
        return new ContainerSizes(
                requireNonNull(row.outline),
                requireNonNull(row.topLengthMm),
                requireNonNull(row.topWidthMm),
                requireNonNull(row.bottomLengthMm),
                requireNonNull(row.bottomWidthMm),
                requireNonNull(row.depthMm),
                requireNonNull(row.lipMm),
                0);
    }

    static @Nullable Span span(@Nullable Double low, @Nullable Double high) {
        return low == null || high == null ? null : new Span(low, high);
    }
}
