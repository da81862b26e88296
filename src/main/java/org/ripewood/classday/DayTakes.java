package org.ripewood.classday;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.course.Technique;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.records.ContainerStay;

/** What work takes from stock, tree by tree, and what there is under the same names. */
final class DayTakes {

    private static final int DECIMALS = 1;
    private static final String LITRES = "l";

    private final StockSnapshot stock;
    private final Map<Long, ContainerStay> containers;

    /** Whether what is short can still be bought; then it keeps no tree from its work. */
    private final boolean timeToBuy;

    DayTakes(StockSnapshot stock, Map<Long, ContainerStay> containers, boolean timeToBuy) {
        this.stock = stock;
        this.containers = containers;
        this.timeToBuy = timeToBuy;
    }

    /** Empty where the amount goes by the container and nobody said how large that is. */
    Optional<BigDecimal> amount(Technique.Take take, long treeId) {
        double amount = take.amount();
        if (take.perContainerLitre()) {
            var stay = containers.get(treeId);
            var litres = stay == null ? null : stay.litres();
            if (litres == null || !(litres > 0)) {
                return Optional.empty();
            }
            amount *= litres;
        }
        return Optional.of(plain(BigDecimal.valueOf(amount).setScale(DECIMALS, RoundingMode.UP)));
    }

    /** What one tree's work takes of what bars it when it is short, by item and unit. */
    Map<String, Double> of(Technique technique, long treeId) {
        var taken = new HashMap<String, Double>();
        if (!timeToBuy) {
            for (var take : technique.takes()) {
                amount(take, treeId)
                        .ifPresent(
                                amount ->
                                        taken.merge(
                                                name(take.item(), take.unit()),
                                                amount.doubleValue(),
                                                Double::sum));
            }
        }
        return taken;
    }

    /** What there is of everything, by item and unit. */
    Map<String, Double> amounts() {
        var amounts = new HashMap<String, Double>();
        held().forEach(
                        one ->
                                amounts.merge(
                                        name(one.item(), one.unit()),
                                        one.amount().doubleValue(),
                                        Double::sum));
        return amounts;
    }

    /** Without needless noughts, and never as a power of ten. */
    private static BigDecimal plain(BigDecimal amount) {
        var stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static String name(String item, String unit) {
        return "%s (%s)".formatted(item, unit);
    }

    /** What is in stock under the names needed: wire of one metal, and all substrates, as one. */
    List<Held> held() {
        var held = new ArrayList<Held>();
        for (var one : stock.held()) {
            held.add(new Held(lower(one.item()), one.amount(), one.unit()));
        }
        for (var metal : WireMetal.values()) {
            double grams =
                    stock.wires().stream()
                            .filter(wire -> wire.metal() == metal)
                            .mapToDouble(StockSnapshot.WireHeld::grams)
                            .sum();
            held.add(
                    new Held(lower(metal.name()) + " wire", plain(BigDecimal.valueOf(grams)), "g"));
        }
        var substrates = new LinkedHashSet<String>();
        stock.substrates().forEach(substrate -> substrates.add(substrate.name()));
        stock.held().stream()
                .filter(one -> substrates.contains(one.item()) && one.unit().equals(LITRES))
                .forEach(one -> held.add(new Held(Technique.Take.SUBSTRATE, one.amount(), LITRES)));
        return held;
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
