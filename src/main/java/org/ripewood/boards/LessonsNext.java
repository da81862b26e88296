package org.ripewood.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ripewood.core.progress.Reason;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Truth;
import org.ripewood.core.progress.Verdict;
import org.ripewood.course.Content;
import org.ripewood.standing.TreeOnDay;

/**
 * Which lesson frees most: by steps that wait for nothing but its skill, then by their trees, then
 * by the lesson's place in the course. What also waits for something else is counted beside it.
 */
final class LessonsNext {

    private static final Set<Verdict> SETTLED = Set.of(Verdict.DONE, Verdict.NOT_NEEDED);

    /** What one lesson is missing for. */
    private static final class Tally {
        private int steps;
        private int waiting;
        private final Set<Long> trees = new HashSet<>();
        private final Set<Long> students = new HashSet<>();
    }

    private LessonsNext() {}

    static List<LessonNeed> of(Content content, List<TreeOnDay> trees) {
        var tallies = new HashMap<String, Tally>();
        for (var tree : trees) {
            for (var standing : tree.standings()) {
                if (!SETTLED.contains(standing.verdict())) {
                    count(tree, standing, tallies);
                }
            }
        }
        var places = new ArrayList<>(content.lessons().keySet());
        return tallies.entrySet().stream()
                .map(entry -> told(content, entry))
                .sorted(
                        Comparator.comparingInt(LessonNeed::steps)
                                .thenComparingInt(LessonNeed::trees)
                                .reversed()
                                .thenComparingInt(need -> places.indexOf(need.lesson()))
                                .thenComparing(LessonNeed::lesson))
                .toList();
    }

    private static void count(TreeOnDay tree, Standing standing, Map<String, Tally> tallies) {
        for (var reason : standing.reasons()) {
            if (reason instanceof Reason.OfSkill skill && skill.truth() == Truth.NO) {
                var tally = tallies.computeIfAbsent(skill.lesson(), code -> new Tally());
                if (standing.verdict() == Verdict.LESSON) {
                    tally.steps++;
                    tally.trees.add(tree.tree().id());
                    tally.students.add(tree.tree().keeperId());
                } else {
                    tally.waiting++;
                }
            }
        }
    }

    private static LessonNeed told(Content content, Map.Entry<String, Tally> entry) {
        var lesson = content.lessons().get(entry.getKey());
        var tally = entry.getValue();
        return new LessonNeed(
                entry.getKey(),
                lesson == null ? entry.getKey() : lesson.title(),
                lesson == null ? null : lesson.minutes(),
                tally.steps,
                tally.trees.size(),
                tally.students.size(),
                tally.waiting);
    }
}
