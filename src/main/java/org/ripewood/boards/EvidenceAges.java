package org.ripewood.boards;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Verdict;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.standing.TreeOnDay;

/**
 * Evidence that is too old for a criterion, or soon will be. Techniques that are done or not needed
 * ask for nothing; of several criteria on a fact the one that asks for the freshest counts.
 */
final class EvidenceAges {

    private static final int MOST_TOLD = 50;
    private static final Set<Verdict> SETTLED = Set.of(Verdict.DONE, Verdict.NOT_NEEDED);

    /** Evidence with the last day on which all criteria take it. */
    record Age(Evidence evidence, LocalDate goodUntil) {}

    private EvidenceAges() {}

    /** What of a tree is too old within so many weeks of its day. */
    static Map<Fact, Age> of(TreeOnDay tree, int withinWeeks) {
        var ages = new EnumMap<Fact, Age>(Fact.class);
        var horizon = tree.on().plusWeeks(withinWeeks);
        tree.standings().stream()
                .filter(standing -> !SETTLED.contains(standing.verdict()))
                .flatMap(standing -> standing.reasons().stream())
                .flatMap(reason -> age(reason, tree.subject().growing()))
                .filter(age -> age.goodUntil().isBefore(horizon))
                .forEach(age -> ages.merge(age.evidence().fact(), age, EvidenceAges::sooner));
        return ages;
    }

    private static Stream<Age> age(Reason reason, GrowingDays growing) {
        if (reason instanceof Reason.OfCriterion asked) {
            var evidence = asked.evidence();
            if (evidence != null && asked.look() != Reason.Look.MISSING) {
                return Stream.ofNullable(
                                asked.criterion().goodUntil(evidence.observedOn(), growing))
                        .map(until -> new Age(evidence, until));
            }
        }
        return Stream.empty();
    }

    private static Age sooner(Age one, Age other) {
        return other.goodUntil().isBefore(one.goodUntil()) ? other : one;
    }

    /** By fact, those of most trees first. */
    static List<Board.Ageing> count(List<TreeOnBoard> trees) {
        var told = new EnumMap<Fact, Board.Ageing>(Fact.class);
        for (var tree : trees) {
            tree.ages()
                    .forEach(
                            (fact, age) -> {
                                var title = tree.day().content().text(fact).title();
                                var stale = age.goodUntil().isBefore(tree.day().on()) ? 1 : 0;
                                told.merge(
                                        fact,
                                        new Board.Ageing(fact.code(), title, 1, stale),
                                        EvidenceAges::sum);
                            });
        }
        return told.values().stream()
                .sorted(
                        Comparator.comparingInt(Board.Ageing::trees)
                                .reversed()
                                .thenComparing(Board.Ageing::title))
                .toList();
    }

    private static Board.Ageing sum(Board.Ageing one, Board.Ageing other) {
        return new Board.Ageing(
                one.fact(), one.title(), one.trees() + other.trees(), one.stale() + other.stale());
    }

    /** Tree by tree, the oldest evidence first. */
    static List<Board.Aged> oldest(List<TreeOnBoard> trees) {
        return trees.stream()
                .flatMap(tree -> tree.ages().values().stream().map(age -> told(tree, age)))
                .sorted(
                        Comparator.comparing(Board.Aged::goodUntil)
                                .thenComparing(Board.Aged::label)
                                .thenComparing(Board.Aged::treeId)
                                .thenComparing(Board.Aged::fact))
                .limit(MOST_TOLD)
                .toList();
    }

    private static Board.Aged told(TreeOnBoard tree, Age age) {
        var fact = age.evidence().fact();
        var kept = tree.day().tree();
        return new Board.Aged(
                kept.id(),
                kept.label(),
                tree.keeper(),
                fact.code(),
                tree.day().content().text(fact).title(),
                age.evidence().observedOn(),
                age.goodUntil(),
                age.goodUntil().isBefore(tree.day().on()));
    }
}
