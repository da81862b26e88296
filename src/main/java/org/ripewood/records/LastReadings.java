package org.ripewood.records;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.Earlier;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;

/**
 * What was measured last on a tree, wherever something is measured again and again.
 *
 * @param marks the latest diameter at each height that is still on the tree, lowest first
 * @param wounds those that are to close and have not, widest first
 * @param whole the latest number of each fact of the tree as a whole
 */
public record LastReadings(
        List<Observation> marks, List<Wound> wounds, Map<Fact, Observation> whole) {

    public LastReadings {
        marks = List.copyOf(marks);
        wounds = List.copyOf(wounds);
        whole = Map.copyOf(whole);
    }

    static LastReadings of(Collection<Observation> standing, Collection<Wound> wounds) {
        var whole = whole(standing);
        var height = whole.get(Fact.HEIGHT_MM);
        return new LastReadings(
                marks(standing, height == null ? null : earlier(height)),
                wounds.stream()
                        .filter(wound -> !wound.deadwoodByDesign() && wound.openMm() > 0)
                        .sorted(Comparator.comparingDouble(Wound::openMm).reversed())
                        .toList(),
                whole);
    }

    /** The number of an entry; only asked of entries of facts that are numbers. */
    static double amount(Observation seen) {
        return ((Value.Number) seen.value()).amount();
    }

    public static double heightMm(Observation mark) {
        var height = mark.heightMm();
        if (height == null) {
            throw new IllegalStateException("entry %d has no height".formatted(mark.id()));
        }
        return height;
    }

    private static Map<Fact, Observation> whole(Collection<Observation> standing) {
        return standing.stream()
                .filter(seen -> seen.fact().scope() == Fact.Scope.TREE)
                .filter(seen -> seen.value() instanceof Value.Number)
                .collect(
                        Collectors.toMap(
                                Observation::fact,
                                seen -> seen,
                                BinaryOperator.maxBy(Readings.BY_WEIGHT),
                                () -> new EnumMap<>(Fact.class)));
    }

    static Earlier earlier(Observation seen) {
        return new Earlier(seen.observedOn(), amount(seen));
    }

    /**
     * The latest diameter at each height that is still on the tree, lowest first. Heights are told
     * apart to the millimetre, as nobody finds a mark again more nearly.
     */
    public static List<Observation> marks(
            Collection<Observation> standing, @Nullable Earlier treeHeight) {
        return List.copyOf(
                standing.stream()
                        .filter(seen -> seen.fact() == Fact.TRUNK_DIAMETER_MM)
                        .filter(mark -> treeHeight == null || stillThere(mark, treeHeight))
                        .collect(
                                Collectors.toMap(
                                        mark -> Math.round(heightMm(mark)),
                                        mark -> mark,
                                        BinaryOperator.maxBy(Readings.BY_WEIGHT),
                                        TreeMap::new))
                        .values());
    }

    /** A mark above the height measured at the time or later was cut off with the trunk. */
    private static boolean stillThere(Observation mark, Earlier treeHeight) {
        return mark.observedOn().isAfter(treeHeight.on()) || heightMm(mark) <= treeHeight.mm();
    }
}
