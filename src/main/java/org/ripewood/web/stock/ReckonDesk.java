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
import org.ripewood.web.kit.Typed;

/** Takes what a calculator is asked to the one who answers, with the stock of today. */
@ApplicationScoped
class ReckonDesk {

    private final Materials materials;
    private final Inputs inputs;
    private final Today today;

    ReckonDesk(Materials materials, Inputs inputs, Today today) {
        this.materials = materials;
        this.inputs = inputs;
        this.today = today;
    }

    ReckonSheet lay(Actor actor, Reckoning what, Typed typed, @Nullable ReckonResult result) {
        var stock = materials.stockOn(actor, today.date());
        var names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        names.addAll(stock.mixes().keySet());
        stock.substrates().stream().map(Substrate::name).forEach(names::add);
        return new ReckonSheet(
                what, List.of(Reckoning.values()), List.copyOf(names), typed, result);
    }

    /** What is usual, or what a link brought along. */
    Typed fresh(Reckoning what, Typed typed, MultivaluedMap<String, String> brought) {
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

    Typed asked(String form, MultivaluedMap<String, String> fields) {
        return new Typed(form, new HashMap<>(fields), null);
    }

    ReckonResult reckon(Actor actor, Reckoning what, MultivaluedMap<String, String> fields) {
        var stock = materials.stockOn(actor, today.date());
        return switch (what) {
            case CONTAINER -> ContainerTold.of(inputs.read(fields, ReckonAsked.OfContainer.class));
            case MIX -> MixTold.of(inputs.read(fields, ReckonAsked.OfMix.class), stock);
            case NEXT -> NextTold.of(inputs.read(fields, ReckonAsked.OfNext.class), stock);
            case WIRE -> WireTold.of(inputs.read(fields, ReckonAsked.OfWire.class), stock);
            case FEED -> FeedTold.of(inputs.read(fields, ReckonAsked.OfFeed.class));
            case LIFT -> LiftTold.of(inputs.read(fields, ReckonAsked.OfLift.class), stock);
        };
    }
}
