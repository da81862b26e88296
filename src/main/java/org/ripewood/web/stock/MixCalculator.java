package org.ripewood.web.stock;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Batch;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Mix;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.web.stock.CalculatorResult.Line;
import org.ripewood.web.stock.CalculatorResult.Table;

/** What it takes to fill a volume with a mix. */
final class MixCalculator {

    private static final List<String> COLUMNS =
            List.of("Substrate", "To mix", "Bags to open", "In stock", "Bags to buy");

    private MixCalculator() {}

    static CalculatorResult of(CalculatorInput.OfMix asked, StockSnapshot stock) {
        var mix = CalculationText.mix(asked.mix(), stock);
        var settling = asked.settlingPercent();
        var batch =
                mix.fill(asked.litres(), settling == null ? Mix.USUAL_SETTLING : settling / 100);
        var rows = batch.lines().stream().map(line -> row(line, stock)).toList();
        return new CalculatorResult(
                "Mix %s for %s to fill."
                        .formatted(
                                CalculationText.litres(batch.looseLitres()),
                                CalculationText.litres(batch.fillLitres())),
                List.of(
                        new Line("Weighs dry", CalculationText.kg(batch.dryKg())),
                        new Line(
                                "Weighs watered and drained",
                                CalculationText.kg(batch.drainedKg())),
                        new Line("Water it holds", CalculationText.percent(mix.capacityShare())),
                        new Line("Air it keeps", CalculationText.percent(mix.airShare()))),
                List.of(new Table("Substrate by substrate", COLUMNS, rows)),
                List.of(
                        Mix.ESTIMATE,
                        "Bags to buy are for an order of %s, as is usual to have enough."
                                .formatted(CalculationText.litres(batch.orderLitres())),
                        "Take off the root ball before you say how much is to be filled."));
    }

    private static List<String> row(Batch.Line line, StockSnapshot stock) {
        return List.of(
                line.substrate().name(),
                CalculationText.litres(line.litres()),
                bags(line.bagsToOpen()),
                CalculationText.litres(held(line.substrate().name(), stock)),
                bags(line.bagsToBuy()));
    }

    private static String bags(@Nullable Integer bags) {
        return bags == null ? "not in bags" : bags.toString();
    }

    private static double held(String name, StockSnapshot stock) {
        return stock.held().stream()
                .filter(one -> one.item().equals(name) && one.unit().equals("l"))
                .map(Held::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .doubleValue();
    }
}
