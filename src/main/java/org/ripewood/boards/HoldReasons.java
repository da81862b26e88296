package org.ripewood.boards;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ripewood.core.progress.Verdict;
import org.ripewood.readiness.Holds;
import org.ripewood.standing.ReasonText;
import org.ripewood.standing.TreeOnDay;

/** What holds trees back, each thing once a tree; waiting for a turn is no cause of its own. */
final class HoldReasons {

    private static final int MOST = 12;

    private HoldReasons() {}

    /** Titles by code of what holds a tree back. */
    static Map<String, String> of(TreeOnDay tree) {
        var teller = new ReasonText(tree.content(), tree.subject().traits());
        var found = new LinkedHashMap<String, String>();
        tree.steps(Verdict.HELD)
                .flatMap(standing -> standing.reasons().stream())
                .filter(Holds::byItself)
                .forEach(
                        reason ->
                                found.computeIfAbsent(
                                        Holds.code(reason), c -> teller.titleOf(reason)));
        return found;
    }

    /** On how many trees each thing holds work back, most frequent first. */
    static List<Board.HoldCount> count(List<Map<String, String>> byTree) {
        var trees = new HashMap<String, Integer>();
        var titles = new HashMap<String, String>();
        for (var reasons : byTree) {
            titles.putAll(reasons);
            reasons.keySet().forEach(code -> trees.merge(code, 1, Integer::sum));
        }
        return trees.entrySet().stream()
                .map(
                        entry ->
                                new Board.HoldCount(
                                        entry.getKey(),
                                        titles.getOrDefault(entry.getKey(), ""),
                                        entry.getValue()))
                .sorted(
                        Comparator.comparingInt(Board.HoldCount::trees)
                                .reversed()
                                .thenComparing(Board.HoldCount::title))
                .limit(MOST)
                .toList();
    }
}
