package org.ripewood.web.stock;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.HashMap;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Substrate;
import org.ripewood.materials.Materials;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.web.kit.FormState;

/** Takes what a calculator is asked to the one who answers, with the stock of today. */
@ApplicationScoped
class CalculatorAssembler {

    private final Materials materials;
    private final Inputs inputs;
    private final Today today;

    CalculatorAssembler(Materials materials, Inputs inputs, Today today) {
        this.materials = materials;
        this.inputs = inputs;
        this.today = today;
    }

    CalculatorPageModel lay(
            Actor actor, Calculation what, FormState typed, @Nullable CalculatorResult result) {
        var stock = materials.stockOn(actor, today.date());
        var names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        names.addAll(stock.mixes().keySet());
        stock.substrates().stream().map(Substrate::name).forEach(names::add);
        return new CalculatorPageModel(
                what, List.of(Calculation.values()), List.copyOf(names), typed, result);
    }

    /** What is usual, or what a link brought along. */
    FormState fresh(Calculation what, FormState typed, MultivaluedMap<String, String> brought) {
        var usual =
                switch (what) {
                    case MIX -> typed.with("settlingPercent", "10");
                    case LIFT ->
                            typed.with("horizontalCm", "40")
                                    .with("verticalCm", "75")
                                    .with("travelCm", "25")
                                    .with("coupling", "poor");
                    default -> typed;
                };
        for (var field : brought.keySet()) {
            usual = usual.with(field, brought.getFirst(field));
        }
        return usual;
    }

    FormState asked(String form, MultivaluedMap<String, String> fields) {
        return new FormState(form, new HashMap<>(fields), null);
    }

    CalculatorResult reckon(Actor actor, Calculation what, MultivaluedMap<String, String> fields) {
        var stock = materials.stockOn(actor, today.date());
        return switch (what) {
            case CONTAINER ->
                    ContainerCalculator.of(inputs.read(fields, CalculatorInput.OfContainer.class));
            case MIX -> MixCalculator.of(inputs.read(fields, CalculatorInput.OfMix.class), stock);
            case NEXT ->
                    NextContainerCalculator.of(
                            inputs.read(fields, CalculatorInput.OfNext.class), stock);
            case WIRE ->
                    WireCalculator.of(inputs.read(fields, CalculatorInput.OfWire.class), stock);
            case FEED -> FeedCalculator.of(inputs.read(fields, CalculatorInput.OfFeed.class));
            case LIFT ->
                    LiftCalculator.of(inputs.read(fields, CalculatorInput.OfLift.class), stock);
        };
    }
}
