package org.ripewood.boards;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.standing.TreeOnDay;

/**
 * What to look at next, a few things only: each would decide how a technique stands, since nothing
 * known speaks against that technique. First what work of this season waits for, of these what most
 * techniques wait for; care comes behind steps.
 */
final class MeasureNext {

    private MeasureNext() {}

    /** More than these nobody measures in one go. */
    static final int MOST = 3;

    static List<Checklist.Measure> of(TreeOnDay tree) {
        var content = tree.content();
        Map<Fact, Set<String>> waiting = new EnumMap<>(Fact.class);
        var inSeason = EnumSet.noneOf(Fact.class);
        for (var standing : tree.standings()) {
            if (standing.verdict() == Verdict.MEASURE) {
                var title = content.technique(standing.technique()).title();
                var now = TreeOnDay.inSeason(standing) && !tree.isCare(standing);
                eachUnknown(
                        standing,
                        fact -> {
                            waiting.computeIfAbsent(fact, any -> new LinkedHashSet<>()).add(title);
                            if (now) {
                                inSeason.add(fact);
                            }
                        });
            }
        }
        return waiting.entrySet().stream()
                .sorted(
                        Comparator.<Map.Entry<Fact, Set<String>>, Boolean>comparing(
                                        entry -> !inSeason.contains(entry.getKey()))
                                .thenComparingInt(entry -> -entry.getValue().size())
                                .thenComparing(Map.Entry::getKey))
                .limit(MOST)
                .map(entry -> measure(content, entry.getKey(), entry.getValue()))
                .toList();
    }

    /** Shows every fact a student can look at to settle what is not known of a technique. */
    static void eachUnknown(Standing standing, Consumer<Fact> visit) {
        for (var reason : standing.reasons()) {
            if (reason.truth() != Truth.UNKNOWN) {
                continue;
            }
            if (reason instanceof Reason.OfCriterion criterion
                    && criterion.look() != Reason.Look.PROVISIONAL) {
                visit.accept(criterion.criterion().fact());
            } else if (reason instanceof Reason.OfNeed need) {
                need.missing().forEach(visit);
            } else if (reason instanceof Reason.OfLoad) {
                visit.accept(Fact.VIGOUR_INDEX);
            } else if (reason instanceof Reason.OfSeason) {
                visit.accept(Fact.FLOWER_STAGE);
            }
        }
    }

    private static Checklist.Measure measure(Content content, Fact fact, Set<String> titles) {
        var text = content.text(fact);
        return new Checklist.Measure(
                fact.code(), text.title(), text.how(), text.unit(), List.copyOf(titles));
    }
}
