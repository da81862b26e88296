package org.ripewood.core.route;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Which of two heavy works that are due in one growing season goes first: the one of the earlier
 * stage, then the one with more heavy works on the longest way behind it, then the one that stands
 * first in the network. Common practice, no source.
 */
final class Ranks {

    private Ranks() {}

    /** By turn its rank, 0 for the first. */
    static int[] of(PrecedenceGraph network) {
        var turns = network.turns;
        int[] behind = heavyBehind(network);
        var order =
                IntStream.range(0, turns.size())
                        .boxed()
                        .sorted(
                                Comparator.<Integer>comparingInt(
                                                i -> turns.get(i).step().stageOrder())
                                        .thenComparing(
                                                Comparator.<Integer>comparingInt(i -> behind[i])
                                                        .reversed())
                                        .thenComparing(Comparator.naturalOrder()))
                        .toList();
        int[] rank = new int[turns.size()];
        for (int place = 0; place < rank.length; place++) {
            rank[order.get(place)] = place;
        }
        return rank;
    }

    /** Arrows run from earlier places to later ones, so one walk from the end is enough. */
    private static int[] heavyBehind(PrecedenceGraph network) {
        int[] behind = new int[network.turns.size()];
        var arrows =
                network.arrows.stream()
                        .sorted(Comparator.comparingInt(PrecedenceGraph.Arrow::from).reversed())
                        .toList();
        for (var arrow : arrows) {
            int own = network.turns.get(arrow.to()).step().heavy() ? 1 : 0;
            behind[arrow.from()] = Math.max(behind[arrow.from()], behind[arrow.to()] + own);
        }
        return behind;
    }
}
