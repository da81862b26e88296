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
import java.util.Optional;
import java.util.Set;
import org.ripewood.core.supply.Need;
import org.ripewood.core.supply.Shopping;

/** What the work of a class day takes from stock, and what is short of it. */
final class DayShopping {

    private static final String FOR_THE_DAY = "class day";

    /** An item in one unit: nobody can say how many metres a piece is. */
    private record Ware(String item, String unit) {}

    /** What all trees together take of one. */
    private static final class Wanted {
        private BigDecimal amount = BigDecimal.ZERO;
        private final Set<String> trees = new LinkedHashSet<>();
        private final Set<String> unknown = new LinkedHashSet<>();

        void add(String tree, Optional<BigDecimal> taken) {
            trees.add(tree);
            if (taken.isEmpty()) {
                unknown.add(tree);
            }
            amount = amount.add(taken.orElse(BigDecimal.ZERO));
        }
    }

    private final LocalDate day;
    private final DayTakes takes;

    DayShopping(LocalDate day, DayTakes takes) {
        this.day = day;
        this.takes = takes;
    }

    List<SessionPlan.Want> wants(Collection<SessionPlan.Row> rows) {
        var wanted = new LinkedHashMap<Ware, Wanted>();
        for (var row : rows) {
            var technique = row.technique();
            if (technique != null) {
                for (var take : technique.takes()) {
                    wanted.computeIfAbsent(new Ware(take.item(), take.unit()), any -> new Wanted())
                            .add(row.tree(), takes.amount(take, row.treeId()));
                }
            }
        }
        return told(wanted);
    }

    private List<SessionPlan.Want> told(Map<Ware, Wanted> wanted) {
        var needs = new ArrayList<Need>();
        wanted.forEach(
                (ware, of) -> {
                    if (of.amount.signum() > 0) {
                        needs.add(new Need(ware.item(), of.amount, ware.unit(), day, FOR_THE_DAY));
                    }
                });
        var held = takes.held();
        var missing = new HashMap<Ware, BigDecimal>();
        for (var shortfall : Shopping.list(needs, held).find().orElse(List.of())) {
            missing.put(new Ware(shortfall.item(), shortfall.unit()), shortfall.amount());
        }
        var inStock = new HashMap<Ware, BigDecimal>();
        held.forEach(
                one ->
                        inStock.merge(
                                new Ware(one.item(), one.unit()), one.amount(), BigDecimal::add));
        var wants = new ArrayList<SessionPlan.Want>();
        wanted.forEach(
                (ware, of) ->
                        wants.add(
                                new SessionPlan.Want(
                                        ware.item(),
                                        of.amount,
                                        ware.unit(),
                                        inStock.get(ware),
                                        missing.getOrDefault(ware, BigDecimal.ZERO),
                                        List.copyOf(of.trees),
                                        List.copyOf(of.unknown))));
        return wants;
    }
}
