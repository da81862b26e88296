package org.ripewood.boards;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.standing.AliveDoubt;
import org.ripewood.standing.TreeOnDay;
import org.ripewood.standing.Unknown;

/**
 * What to look at next, a few things only, all of which a person can record today. Each would
 * decide how a technique stands, since nothing known speaks against that technique: first what work
 * of this season waits for, of these what most techniques wait for; care comes behind steps.
 *
 * <p>Cuts nobody has spoken of are named last, as they count as none until then.
 *
 * <p>Of a tree that may be dead only its twigs are looked at.
 *
 * <p>Where no technique waits for a look and none is ready, that which changes within days and
 * alone holds a step is looked at again, such as a soil that was dry.
 */
public final class MeasureNext {

    private MeasureNext() {}

    /** More than these nobody measures in one go. */
    public static final int MOST = 3;

    /** At most {@link #MOST}, the most useful first. */
    public static List<Checklist.Measure> of(TreeOnDay tree) {
        if (AliveDoubt.of(tree).isPresent()) {
            return List.of(measure(tree.content(), Fact.DIEBACK_PERCENT, Set.of()));
        }
        var waiting = new Waiting(tree);
        tree.with(Verdict.MEASURE).forEach(standing -> waiting.add(standing, Unknown.of(standing)));
        if (waiting.titles.isEmpty() && tree.free().isEmpty()) {
            tree.steps(Verdict.HELD)
                    .forEach(standing -> waiting.add(standing, changingSoon(standing)));
        }
        return withCuts(tree, waiting.measures());
    }

    /** Cuts nobody has spoken of count as none; so they are named while there is room. */
    private static List<Checklist.Measure> withCuts(
            TreeOnDay tree, List<Checklist.Measure> measures) {
        var facts = tree.subject().facts();
        boolean said =
                facts.find(Fact.WIDEST_OPEN_CUT_MM) != null
                        || !tree.state().record().wounds().isEmpty();
        if (said || measures.size() >= MOST || tree.tree().left()) {
            return measures;
        }
        return Stream.concat(
                        measures.stream(),
                        Stream.of(measure(tree.content(), Fact.WIDEST_OPEN_CUT_MM, Set.of())))
                .toList();
    }

    /** What is looked at on the day, where nothing else holds the step; none otherwise. */
    private static Set<Fact> changingSoon(Standing standing) {
        var facts = EnumSet.noneOf(Fact.class);
        for (var reason : standing.reasons()) {
            if (reason.truth() != Truth.NO) {
                continue;
            }
            if (!(reason instanceof Reason.OfCriterion criterion)
                    || !criterion.criterion().onTheDay()) {
                return Set.of();
            }
            facts.add(criterion.criterion().fact());
        }
        return facts;
    }

    /** What waits for each fact. */
    private static final class Waiting {

        private final TreeOnDay tree;
        private final Map<Fact, Set<String>> titles = new EnumMap<>(Fact.class);
        private final Set<Fact> inSeason = EnumSet.noneOf(Fact.class);

        Waiting(TreeOnDay tree) {
            this.tree = tree;
        }

        void add(Standing standing, Collection<Fact> asked) {
            var title = tree.content().titleOf(standing.technique());
            var now = TreeOnDay.inSeason(standing) && !tree.isCare(standing);
            asked.stream()
                    .flatMap(fact -> LooksNow.toRecord(fact, tree).stream())
                    .forEach(
                            fact -> {
                                titles.computeIfAbsent(fact, any -> new LinkedHashSet<>())
                                        .add(title);
                                if (now) {
                                    inSeason.add(fact);
                                }
                            });
        }

        List<Checklist.Measure> measures() {
            return ordered()
                    .limit(MOST)
                    .map(entry -> measure(tree.content(), entry.getKey(), entry.getValue()))
                    .toList();
        }

        private Stream<Map.Entry<Fact, Set<String>>> ordered() {
            return titles.entrySet().stream()
                    .sorted(
                            Comparator.<Map.Entry<Fact, Set<String>>, Boolean>comparing(
                                            entry -> !inSeason.contains(entry.getKey()))
                                    .thenComparingInt(entry -> -entry.getValue().size())
                                    .thenComparing(Map.Entry::getKey));
        }
    }

    private static Checklist.Measure measure(Content content, Fact fact, Set<String> titles) {
        var text = content.text(fact);
        return new Checklist.Measure(
                fact.code(), text.title(), text.how(), text.unit(), List.copyOf(titles));
    }
}
