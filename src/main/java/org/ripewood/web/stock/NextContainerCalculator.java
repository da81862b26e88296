package org.ripewood.web.stock;

import java.util.List;
import org.ripewood.core.supply.Footprint;
import org.ripewood.core.supply.NextContainer;
import org.ripewood.core.supply.Outline;
import org.ripewood.core.supply.RootBall;
import org.ripewood.core.supply.WantedContainer;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.TextFormat;
import org.ripewood.web.stock.CalculatorResult.Table;

/** Which containers of the stock a tree could step to. */
final class NextContainerCalculator {

    private static final int MOST_TOLD = 10;

    private NextContainerCalculator() {}

    static CalculatorResult of(CalculatorInput.OfNext asked, StockSnapshot stock) {
        var usual =
                WantedContainer.usual(
                        asked.trunkBaseMm(),
                        asked.heightMm(),
                        asked.spreadMm(),
                        asked.presentDepthMm());
        var wanted =
                asked.wantedDepthMm() == null
                        ? usual
                        : new WantedContainer(
                                asked.wantedDepthMm(), usual.lengthMm(), asked.presentDepthMm());
        var next =
                NextContainer.of(
                        new RootBall(footprint(asked), asked.depthMm()),
                        wanted,
                        stock.containers().stream().map(StockSnapshot.Offered::container).toList());
        return new CalculatorResult(
                headline(next),
                List.of(),
                List.of(
                        new Table(
                                "It fits into, best first",
                                List.of("Container", "Left", "Substrate", "Why"),
                                next.fitting().stream()
                                        .limit(MOST_TOLD)
                                        .map(NextContainerCalculator::row)
                                        .toList()),
                        new Table(
                                "Too small or used up",
                                List.of("Container", "Of the root ball would go", "Why"),
                                next.tooSmall().stream()
                                        .limit(MOST_TOLD)
                                        .map(NextContainerCalculator::row)
                                        .toList())),
                List.of(
                        "How much root a tree may lose is for its technique to say, and for you to"
                                + " judge.",
                        "The look of tree and container together is not reckoned."));
    }

    private static String headline(NextContainer next) {
        if (next.fitting().isEmpty()) {
            return next.tooSmall().isEmpty()
                    ? "There is no container in stock."
                    : "No container in stock takes this root ball as it is.";
        }
        return "Nearest to what is wanted: %s.".formatted(next.fitting().get(0).offered().name());
    }

    private static List<String> row(NextContainer.Fitting one) {
        return List.of(
                one.offered().name(),
                Integer.toString(one.offered().count()),
                CalculationText.litres(one.litresAround()),
                String.join(" ", one.reasons()));
    }

    private static List<String> row(NextContainer.Unfit one) {
        return List.of(
                one.offered().name(),
                TextFormat.percent(one.offShare()),
                String.join(" ", one.reasons()));
    }

    private static Footprint footprint(CalculatorInput.OfNext asked) {
        var width = asked.widthMm();
        if (asked.outline() == Outline.ROUND) {
            if (width != null && !width.equals(asked.lengthMm())) {
                throw Refused.invalid(
                        "widthMm",
                        "expected nothing, since what is round has one diameter, found "
                                + TextFormat.plain(width));
            }
            return Footprint.round(asked.lengthMm());
        }
        if (width == null) {
            throw Refused.invalid("widthMm", "expected a width, found nothing");
        }
        return new Footprint(asked.outline(), asked.lengthMm(), width);
    }
}
