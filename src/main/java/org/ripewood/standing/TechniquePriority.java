package org.ripewood.standing;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.ripewood.core.progress.Standing;
import org.ripewood.course.Content;

/**
 * Which technique helps a tree on most: the earlier stage first, then the one more others wait for,
 * then by title.
 */
public final class TechniquePriority {

    private final Content content;
    private final Map<String, Integer> waiting = new HashMap<>();

    public TechniquePriority(Content content) {
        this.content = content;
        for (var technique : content.techniques().keySet()) {
            var first = new HashSet<String>();
            collectFirst(technique, first);
            first.forEach(code -> waiting.merge(code, 1, Integer::sum));
        }
    }

    /** How many techniques wait for this one, directly or by way of others. */
    public int waitingFor(String technique) {
        return waiting.getOrDefault(technique, 0);
    }

    /** The most useful first. */
    public Comparator<Standing> mostUsefulFirst() {
        return Comparator.comparing(Standing::technique, byCode());
    }

    public Comparator<String> byCode() {
        return Comparator.<String>comparingInt(code -> content.technique(code).rule().stageOrder())
                .thenComparing(Comparator.<String>comparingInt(this::waitingFor).reversed())
                .thenComparing(code -> content.technique(code).title());
    }

    private void collectFirst(String technique, Set<String> first) {
        for (var code : content.technique(technique).rule().after()) {
            if (first.add(code)) {
                collectFirst(code, first);
            }
        }
    }
}
