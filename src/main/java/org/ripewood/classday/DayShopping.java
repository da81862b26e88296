package org.ripewood.classday;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Need;
import org.ripewood.core.supply.Shopping;
import org.ripewood.core.supply.WireMetal;
import org.ripewood.course.Technique;
import org.ripewood.materials.StockSnapshot;
import org.ripewood.trees.ContainerStay;

/** What the work of a class day takes from stock, and what is short of it. */
final class DayShopping {

    private static final int DECIMALS = 1;
    private static final String LITRES = "l";

    private final LocalDate day;
    private final StockSnapshot stock;
    private final Map<Long, ContainerStay> containers;

    DayShopping(LocalDate day, StockSnapshot stock, Map<Long, ContainerStay> containers) {
        this.day = day;
        this.stock = stock;
        this.containers = containers;
    }

    List<SessionPlan.Want> wants(Collection<SessionPlan.Row> rows) {
        var needs = new ArrayList<Need>();
        var trees = new LinkedHashMap<String, Set<String>>();
        var unknown = new LinkedHashMap<String, Set<String>>();
        for (var row : rows) {
            var technique = row.technique();
            if (technique == null) {
                continue;
            }
            for (var take : technique.takes()) {
                trees.computeIfAbsent(take.item(), any -> new LinkedHashSet<>()).add(row.tree());
                var amount = amount(take, row.treeId());
                if (amount == null) {
                    unknown.computeIfAbsent(take.item(), any -> new LinkedHashSet<>())
                            .add(row.tree());
                } else {
                    needs.add(new Need(take.item(), amount, take.unit(), day, row.tree()));
                }
            }
        }
        return told(needs, trees, unknown);
    }

    private List<SessionPlan.Want> told(
            List<Need> needs, Map<String, Set<String>> trees, Map<String, Set<String>> unknown) {
        var held = held();
        var shortOf = new HashMap<String, BigDecimal>();
        for (var shortfall : Shopping.list(needs, held).find().orElse(List.of())) {
            shortOf.put(shortfall.item(), shortfall.amount());
        }
        var wants = new ArrayList<SessionPlan.Want>();
        for (var item : trees.entrySet()) {
            var unit = unitOf(item.getKey(), needs);
            var inStock = amountOf(item.getKey(), unit, held);
            wants.add(
                    new SessionPlan.Want(
                            item.getKey(),
                            sum(item.getKey(), needs),
                            unit,
                            inStock,
                            shortOf.getOrDefault(item.getKey(), BigDecimal.ZERO),
                            List.copyOf(item.getValue()),
                            List.copyOf(unknown.getOrDefault(item.getKey(), Set.of()))));
        }
        return wants;
    }

    /** Null where the amount goes by the container and nobody said how large that is. */
    private @Nullable BigDecimal amount(Technique.Take take, long treeId) {
        double amount = take.amount();
        if (take.perContainerLitre()) {
            var stay = containers.get(treeId);
            var litres = stay == null ? null : stay.litres();
            if (litres == null || !(litres > 0)) {
                return null;
            }
            amount *= litres;
        }
        return BigDecimal.valueOf(amount).setScale(DECIMALS, RoundingMode.UP).stripTrailingZeros();
    }

    /** What is in stock under the names needed: wire of one metal, and all substrates, as one. */
    private List<Held> held() {
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
            held.add(new Held(lower(metal.name()) + " wire", BigDecimal.valueOf(grams), "g"));
        }
        var substrates = new LinkedHashSet<String>();
        stock.substrates().forEach(substrate -> substrates.add(substrate.name()));
        stock.held().stream()
                .filter(one -> substrates.contains(one.item()) && one.unit().equals(LITRES))
                .forEach(one -> held.add(new Held(Technique.Take.SUBSTRATE, one.amount(), LITRES)));
        return held;
    }

    private static @Nullable BigDecimal amountOf(String item, String unit, List<Held> held) {
        BigDecimal amount = null;
        for (var one : held) {
            if (one.item().equals(item) && one.unit().equals(unit)) {
                amount = amount == null ? one.amount() : amount.add(one.amount());
            }
        }
        return amount;
    }

    private static BigDecimal sum(String item, List<Need> needs) {
        return needs.stream()
                .filter(need -> need.item().equals(item))
                .map(Need::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static String unitOf(String item, List<Need> needs) {
        return needs.stream()
                .filter(need -> need.item().equals(item))
                .map(Need::unit)
                .findFirst()
                .orElse("");
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
