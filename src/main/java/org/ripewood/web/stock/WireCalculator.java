package org.ripewood.web.stock;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.supply.WireChoice;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.materials.StockSnapshot.WireHeld;
import org.ripewood.web.kit.TextFormat;
import org.ripewood.web.stock.CalculatorResult.Line;

/** Wire for a branch among what is in stock. */
final class WireCalculator {

    private WireCalculator() {}

    static CalculatorResult of(CalculatorInput.OfWire asked, StockSnapshot stock) {
        var held =
                stock.wires().stream()
                        .filter(one -> one.metal() == asked.metal() && one.grams() > 0)
                        .toList();
        var reckoned =
                WireChoice.of(
                        asked.branchMm(),
                        asked.acrossMm(),
                        asked.metal(),
                        held.stream().map(WireHeld::gaugeMm).toList());
        var choice = CalculationText.value(reckoned);
        double metres = metresHeld(asked.metal(), choice.gaugeMm(), held);
        var cautions = new ArrayList<>(reckoned.remarks());
        if (metres < choice.metres()) {
            cautions.add("Only %s m of it are in stock.".formatted(TextFormat.plain(metres)));
        }
        cautions.add("Look every two weeks in growth, and take it off before it bites.");
        cautions.add("Keep your eyes away from wire ends: cut ends spring.");
        return new CalculatorResult(
                "%s of %s wire, %s mm thick."
                        .formatted(
                                choice.strands() == 1 ? "One length" : "Two lengths side by side",
                                TextFormat.small(asked.metal()),
                                TextFormat.plain(choice.gaugeMm())),
                List.of(
                        new Line("Length in all", TextFormat.plain(choice.metres()) + " m"),
                        new Line("Weight", TextFormat.plain(choice.grams()) + " g"),
                        new Line("In stock", TextFormat.plain(metres) + " m")),
                List.of(),
                cautions);
    }

    private static double metresHeld(WireMetal metal, double gaugeMm, List<WireHeld> held) {
        return held.stream()
                .filter(one -> one.gaugeMm() == gaugeMm)
                .mapToDouble(one -> metal.metresIn(one.grams(), gaugeMm))
                .sum();
    }
}
