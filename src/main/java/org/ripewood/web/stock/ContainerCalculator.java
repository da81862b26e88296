package org.ripewood.web.stock;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.ContainerSizes;
import org.ripewood.core.supply.NurseryClass;
import org.ripewood.web.kit.TextFormat;
import org.ripewood.web.stock.CalculatorResult.Line;

/** What a container holds. */
final class ContainerCalculator {

    private ContainerCalculator() {}

    static CalculatorResult of(CalculatorInput.OfContainer asked) {
        var sizes =
                CalculationText.value(
                        ContainerSizes.of(
                                asked.outline(),
                                asked.topLengthMm(),
                                asked.topWidthMm(),
                                asked.bottomLengthMm(),
                                asked.bottomWidthMm(),
                                asked.depthMm(),
                                orNothing(asked.lipMm()),
                                orNothing(asked.dressingMm())));
        var reckoned = sizes.reckon();
        var container = CalculationText.value(reckoned);
        var lines = new ArrayList<Line>();
        lines.add(new Line("To the rim", CalculationText.litres(container.brimLitres())));
        if (container.dressingMm() > 0) {
            lines.add(new Line("Top dressing", CalculationText.litres(container.dressingLitres())));
        }
        lines.add(new Line("Depth for roots", TextFormat.plain(container.rootDepthMm()) + " mm"));
        lines.add(new Line("Area at the rim", TextFormat.plain(container.topAreaCm2()) + " cm²"));
        lines.add(
                new Line(
                        "Among nursery containers",
                        NurseryClass.of(container.brimLitres()).words()));
        var cautions = new ArrayList<>(reckoned.remarks());
        cautions.add("Soft corners and rounded walls hold a little less.");
        return new CalculatorResult(
                "It holds %s of substrate."
                        .formatted(CalculationText.litres(container.substrateLitres())),
                lines,
                List.of(),
                cautions);
    }

    private static double orNothing(@Nullable Double mm) {
        return mm == null ? 0 : mm;
    }
}
