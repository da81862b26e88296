package org.ripewood.materials;

import org.ripewood.core.supply.ContainerSizes;
import org.ripewood.core.supply.Reckoned;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;

/** A container's sizes as they are typed. */
final class ContainerTyped {

    private ContainerTyped() {}

    static void describe(StockItemEntity row, NewStockContainer container) {
        var lip = container.lipMm();
        var sizes =
                value(
                        ContainerSizes.of(
                                container.outline(),
                                container.topLengthMm(),
                                container.topWidthMm(),
                                container.bottomLengthMm(),
                                container.bottomWidthMm(),
                                container.depthMm(),
                                lip == null ? 0 : lip,
                                0));
        value(sizes.reckon());
        row.usedAs = container.use();
        row.material = container.material();
        row.outline = sizes.outline();
        row.topLengthMm = sizes.topLengthMm();
        row.topWidthMm = sizes.topWidthMm();
        row.bottomLengthMm = sizes.bottomLengthMm();
        row.bottomWidthMm = sizes.bottomWidthMm();
        row.depthMm = sizes.depthMm();
        row.lipMm = sizes.lipMm();
        row.massKg = container.massKg();
    }

    private static <T> T value(Reckoned<T> reckoned) {
        return reckoned.find()
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        reckoned.refusals().stream()
                                                .map(one -> new Fault(one.field(), one.words()))
                                                .toList()));
    }
}
