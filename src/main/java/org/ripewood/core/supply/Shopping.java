package org.ripewood.core.supply;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** What has to be bought. */
public final class Shopping {

    private record Ware(String item, String unit) {
        static final Comparator<Ware> ORDER =
                Comparator.comparing(Ware::item).thenComparing(Ware::unit);
    }

    private Shopping() {}

    /**
     * What is short, in the order of days, then of items and units.
     *
     * <p>Formula: the needs of an item eat its stock in the order of their days; short on a day is
     * {@code max(0, needed up to that day − stock)} less what was short before, so that all its
     * shortfalls together are {@code max(0, needed − stock)}. Needs of one day are one. Numbers are
     * exact decimals.
     *
     * <p>Edge cases: items that are told in two units are two items, since nobody can say how many
     * bags a litre is, and a remark says so; the same item held twice is added up. Errors: stock
     * below 0 is refused, for somebody has to count it first. Source: bookkeeping; worked by hand
     * in its test.
     */
    public static Reckoned<List<Shortfall>> list(Collection<Need> needs, Collection<Held> stock) {
        var held = new HashMap<Ware, BigDecimal>();
        for (var one : stock) {
            held.merge(new Ware(one.item(), one.unit()), one.amount(), BigDecimal::add);
        }
        var refusals = refusals(held);
        if (!refusals.isEmpty()) {
            return new Reckoned.Refused<>(refusals);
        }
        var wanted = new TreeMap<Ware, TreeMap<LocalDate, List<Need>>>(Ware.ORDER);
        for (var need : needs) {
            wanted.computeIfAbsent(new Ware(need.item(), need.unit()), ware -> new TreeMap<>())
                    .computeIfAbsent(need.by(), day -> new ArrayList<>())
                    .add(need);
        }
        var shortfalls = new ArrayList<Shortfall>();
        wanted.forEach(
                (ware, days) ->
                        shortfalls.addAll(
                                of(ware, days, held.getOrDefault(ware, BigDecimal.ZERO))));
        // stable: items of one day keep their order
        shortfalls.sort(Comparator.comparing(Shortfall::by));
        return new Reckoned.Found<>(shortfalls, otherUnits(wanted.keySet(), held));
    }

    private static List<Shortfall> of(
            Ware ware, SortedMap<LocalDate, List<Need>> days, BigDecimal stock) {
        var shortfalls = new ArrayList<Shortfall>();
        var left = stock;
        for (var day : days.entrySet()) {
            var needed =
                    day.getValue().stream()
                            .map(Need::amount)
                            .reduce(BigDecimal.ZERO, BigDecimal::add);
            var lacking = needed.subtract(left);
            left = left.subtract(needed).max(BigDecimal.ZERO);
            if (lacking.signum() > 0) {
                shortfalls.add(
                        new Shortfall(
                                ware.item(), lacking, ware.unit(), day.getKey(), forWhat(day)));
            }
        }
        return shortfalls;
    }

    private static List<String> forWhat(Map.Entry<LocalDate, List<Need>> day) {
        return new ArrayList<>(new TreeSet<>(day.getValue().stream().map(Need::forWhat).toList()));
    }

    private static List<Refusal> refusals(Map<Ware, BigDecimal> held) {
        return held.entrySet().stream()
                .filter(entry -> entry.getValue().signum() < 0)
                .sorted(Map.Entry.comparingByKey(Ware.ORDER))
                .map(
                        entry ->
                                new Refusal(
                                        entry.getKey().item(),
                                        "expected a stock of 0 or more, found %s %s. Maybe count it again."
                                                .formatted(
                                                        entry.getValue().toPlainString(),
                                                        entry.getKey().unit())))
                .toList();
    }

    private static List<String> otherUnits(Collection<Ware> wanted, Map<Ware, BigDecimal> held) {
        return wanted.stream()
                .filter(ware -> !held.containsKey(ware))
                .flatMap(
                        ware ->
                                held.keySet().stream()
                                        .filter(other -> other.item().equals(ware.item()))
                                        .sorted(Ware.ORDER)
                                        .map(
                                                other ->
                                                        "%s is wanted in %s and counted in %s; they are not set against each other."
                                                                .formatted(
                                                                        ware.item(),
                                                                        ware.unit(),
                                                                        other.unit())))
                .toList();
    }
}
