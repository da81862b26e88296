package org.ripewood.web.stock;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Estimate;
import org.ripewood.core.supply.HandHeight;
import org.ripewood.core.supply.Lift;
import org.ripewood.core.supply.LiftAdvice;
import org.ripewood.core.supply.Mix;
import org.ripewood.core.supply.PottedTree;
import org.ripewood.core.supply.Span;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.TextFormat;
import org.ripewood.web.stock.CalculatorResult.Line;
import org.ripewood.web.stock.CalculatorResult.Table;

/** Whether one person should lift a potted tree. */
final class LiftCalculator {

    private LiftCalculator() {}

    static CalculatorResult of(CalculatorInput.OfLift asked, StockSnapshot stock) {
        var twist = asked.asymmetryDegrees();
        var lift =
                new Lift(
                        asked.horizontalCm(),
                        asked.verticalCm(),
                        asked.travelCm(),
                        twist == null ? 0 : twist,
                        Lift.NOW_AND_THEN,
                        asked.coupling());
        var weight = weight(asked, stock);
        var lines = new ArrayList<Line>();
        lines.add(new Line("It weighs", CalculationText.kg(weight)));
        lines.add(
                new Line(
                        "Recommended for one, held like this",
                        lift.recommendedKg() == 0
                                ? "nothing; it is too far, too high or too twisted"
                                : "up to " + rounded(lift.recommendedKg()) + " kg"));
        if (!(weight instanceof Estimate.Known known)) {
            return new CalculatorResult(
                    "Nobody can say yet: its weight is not known. Take two people or a trolley until"
                            + " it is.",
                    lines,
                    List.of(screening()),
                    List.of(LiftAdvice.LOCAL_RULES));
        }
        // of a range the heavier end, since nobody lifts the lighter one
        var advice = lift.advice(known.span().high());
        var index = advice.index();
        if (index != null) {
            lines.add(new Line("Weight over that", TextFormat.plain(index) + " times"));
        }
        return new CalculatorResult(
                advice.way().words(),
                lines,
                List.of(screening()),
                List.of(
                        LiftAdvice.LOCAL_RULES,
                        "Reckon where it is put down as well, and go by the lower of the two.",
                        "Wet gloves, a slippery floor and a sore back are not in the figures."));
    }

    private static Estimate weight(CalculatorInput.OfLift asked, StockSnapshot stock) {
        var kg = asked.kg();
        if (kg != null) {
            return new Estimate.Known(Span.exactly(kg));
        }
        return new PottedTree(
                        substrate(asked.mix(), asked.litres(), stock),
                        asked.containerKg(),
                        asked.treeKg())
                .wetKg();
    }

    private static Estimate substrate(
            @Nullable String mix, @Nullable Double litres, StockSnapshot stock) {
        if (mix == null || litres == null) {
            throw Refused.invalid(
                    mix == null ? "kg" : "litres",
                    mix == null
                            ? "expected a weight, or a mix and its litres to reckon it from, found neither"
                            : "expected the litres of the mix, found nothing");
        }
        return CalculationText.mix(mix, stock).fill(litres, Mix.USUAL_SETTLING).drainedKg();
    }

    private static Table screening() {
        return new Table(
                "Up to these a lift now and then needs no closer look (women / men, kg)",
                List.of("Hands", "Close to the body", "At arm's length"),
                List.of(HandHeight.values()).stream().map(LiftCalculator::row).toList());
    }

    private static List<String> row(HandHeight height) {
        return List.of(TextFormat.titled(height), weights(height.close()), weights(height.far()));
    }

    private static String weights(HandHeight.Screening screening) {
        return screening.womenKg() + " / " + screening.menKg();
    }

    private static String rounded(double kg) {
        return TextFormat.plain(Math.floor(10 * kg) / 10);
    }
}
