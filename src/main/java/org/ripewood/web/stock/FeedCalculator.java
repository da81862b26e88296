package org.ripewood.web.stock;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.LiquidFeed;
import org.ripewood.core.supply.Product;
import org.ripewood.core.supply.SlowFeed;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.web.kit.TextFormat;
import org.ripewood.web.stock.CalculatorResult.Line;

/** How much of a feed, in water or mixed into the substrate. */
final class FeedCalculator {

    private static final double WHOLE_PERCENT = 100;

    private final List<String> headlines = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    /** The label is pointed to once, however many doses there are. */
    private final Set<String> cautions = new LinkedHashSet<>();

    private FeedCalculator() {}

    static CalculatorResult of(CalculatorInput.OfFeed asked) {
        var product = product(asked);
        var told = new FeedCalculator();
        told.inWater(asked.mgNPerLitre(), asked.waterLitres(), product);
        told.slow(asked.containerLitres(), asked.months(), product);
        if (told.headlines.isEmpty()) {
            throw Refused.invalid(
                    "mgNPerLitre",
                    "expected a strength and water, or a container and months, found neither");
        }
        return new CalculatorResult(
                String.join(" ", told.headlines),
                told.lines,
                List.of(),
                List.copyOf(told.cautions));
    }

    private void inWater(
            @Nullable Double mgNPerLitre, @Nullable Double waterLitres, Product product) {
        if (mgNPerLitre == null && waterLitres == null) {
            return;
        }
        if (mgNPerLitre == null || waterLitres == null) {
            throw alone(mgNPerLitre == null ? "mgNPerLitre" : "waterLitres");
        }
        var reckoned = LiquidFeed.of(mgNPerLitre, waterLitres, product);
        var feed = CalculationText.value(reckoned);
        headlines.add(
                "%s g in %s of water."
                        .formatted(
                                TextFormat.plain(feed.grams()),
                                CalculationText.litres(waterLitres)));
        lines.add(new Line("In each litre", TextFormat.plain(feed.gramsPerLitre()) + " g"));
        lines.add(new Line("Phosphorus with it", TextFormat.plain(feed.mgPPerLitre()) + " mg/l"));
        lines.add(new Line("Potassium with it", TextFormat.plain(feed.mgKPerLitre()) + " mg/l"));
        cautions.addAll(reckoned.remarks());
    }

    private void slow(@Nullable Double containerLitres, @Nullable Double months, Product product) {
        if (containerLitres == null && months == null) {
            return;
        }
        if (containerLitres == null || months == null) {
            throw alone(containerLitres == null ? "containerLitres" : "months");
        }
        var reckoned = SlowFeed.of(containerLitres, months, product);
        var dose = CalculationText.value(reckoned);
        headlines.add(
                "%s g of slow feed for a container of %s."
                        .formatted(
                                TextFormat.plain(dose.grams()),
                                CalculationText.litres(containerLitres)));
        lines.add(new Line("Nitrogen in it", TextFormat.plain(dose.gramsN()) + " g"));
        cautions.addAll(reckoned.remarks());
        cautions.add("Coated feed gives faster in warmth.");
    }

    /** Of one alone nobody can reckon anything. */
    private static Refused alone(String missing) {
        return Refused.invalid(missing, "expected this as well, found nothing");
    }

    private static Product product(CalculatorInput.OfFeed asked) {
        double p = asked.percentP2o5() == null ? 0 : asked.percentP2o5();
        double k = asked.percentK2o() == null ? 0 : asked.percentK2o();
        if (asked.percentN() + p + k > WHOLE_PERCENT) {
            throw Refused.invalid(
                    List.of(
                            new Fault(
                                    "percentN",
                                    "expected 100 %% together at most, found %s"
                                            .formatted(
                                                    TextFormat.plain(asked.percentN() + p + k)))));
        }
        return new Product(asked.percentN(), p, k);
    }
}
