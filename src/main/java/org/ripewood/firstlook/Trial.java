package org.ripewood.firstlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ripewood.core.progress.Evidence;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Facts;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Standing;
import org.ripewood.core.progress.Value;
import org.ripewood.standing.TreeOnDay;

/**
 * How a tree would stand if something were known of it.
 *
 * @param eye who would have seen it
 */
record Trial(TreeOnDay tree, Source eye) {

    /** How many techniques would stand otherwise by the answer that changes most. */
    int decides(LookQuestion question) {
        return question.outcomes().stream().mapToInt(this::changed).max().orElse(0);
    }

    /** How many techniques would stand otherwise. */
    int changed(Map<Fact, Value> known) {
        var before = tree.standings();
        var after = standings(known);
        int changed = 0;
        for (int i = 0; i < before.size(); i++) {
            if (before.get(i).verdict() != after.get(i).verdict()) {
                changed++;
            }
        }
        return changed;
    }

    private List<Standing> standings(Map<Fact, Value> known) {
        var evidence = new ArrayList<Evidence>();
        for (var seen : tree.subject().facts().all()) {
            if (!known.containsKey(seen.fact())) {
                evidence.add(seen);
            }
        }
        known.forEach(
                (fact, value) -> evidence.add(new Evidence(fact, value, tree.on(), eye, "", 0)));
        return tree.content()
                .rulebook()
                .standings(tree.subject().with(Facts.of(evidence)), tree.on());
    }
}
