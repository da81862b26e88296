package org.ripewood.classday;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Held;
import org.ripewood.core.supply.Need;
import org.ripewood.core.supply.Shopping;

/** What the work of a class day takes from stock, and what is short of it. */
final class DayShopping {

    private final LocalDate day;
    private final DayTakes takes;

    DayShopping(LocalDate day, DayTakes takes) {
        this.day = day;
        this.takes = takes;
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
                var amount = takes.amount(take, row.treeId()).orElse(null);
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
        var held = takes.held();
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
}
