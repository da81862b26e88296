package org.ripewood.web.stock;

import org.ripewood.core.supply.Estimate;
import org.ripewood.core.supply.Mix;
import org.ripewood.core.supply.Reckoned;
import org.ripewood.core.supply.Span;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.platform.problems.Fault;
import org.ripewood.platform.problems.Refused;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.web.kit.TextFormat;

/** What the answers of the calculators have in common. */
final class CalculationText {

    private CalculationText() {}

    /** The value; where there is none, the reasons go back to the fields they are about. */
    static <T> T value(Reckoned<T> reckoned) {
        return reckoned.find()
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        reckoned.refusals().stream()
                                                .map(one -> new Fault(one.field(), one.words()))
                                                .toList()));
    }

    static String kg(Estimate estimate) {
        return told(estimate, 1, "kg");
    }

    static String percent(Estimate estimate) {
        return told(estimate, 100, "%");
    }

    private static String told(Estimate estimate, double factor, String unit) {
        if (estimate instanceof Estimate.Known known) {
            return range(known.span(), factor) + " " + unit;
        }
        return "not known; missing: " + String.join(", ", ((Estimate.Unknown) estimate).missing());
    }

    /** Two decimals are more than anybody weighs. */
    private static String range(Span span, double factor) {
        var low = TextFormat.plain(Math.round(10 * span.low() * factor) / 10.0);
        var high = TextFormat.plain(Math.round(10 * span.high() * factor) / 10.0);
        return low.equals(high) ? low : low + " to " + high;
    }

    static String litres(double litres) {
        return TextFormat.plain(litres) + " l";
    }

    /** A mix of the stock, or one of its substrates by itself. */
    static Mix mix(String name, StockSnapshot stock) {
        var mix = stock.mixes().get(name);
        if (mix != null) {
            return mix;
        }
        return stock.substrates().stream()
                .filter(substrate -> substrate.name().equals(name))
                .findFirst()
                .map(Mix::of)
                .orElseThrow(
                        () ->
                                Refused.invalid(
                                        "mix",
                                        "expected a mix or a substrate in stock, found “%s”.%s"
                                                .formatted(
                                                        name,
                                                        Suggestion.maybe(
                                                                stock.mixes().keySet(), name))));
    }
}
