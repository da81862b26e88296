package org.ripewood.core.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Holds contenders against each other, tree by tree. */
final class Agreement {

    private Agreement() {}

    /** What two contenders see differently, a line a technique; empty when they agree. */
    static List<String> differences(Contender one, Contender other, List<RandomTrees.Case> cases) {
        var differences = new ArrayList<String>();
        for (var tree : cases) {
            var expected = byTechnique(one.judge(tree.subject(), tree.on()));
            var found = byTechnique(other.judge(tree.subject(), tree.on()));
            expected.forEach(
                    (technique, said) -> {
                        var answer = found.remove(technique);
                        if (!said.equals(answer)) {
                            differences.add(
                                    "seed %d, %s: %s against %s"
                                            .formatted(tree.seed(), technique, said, answer));
                        }
                    });
            found.forEach((code, said) -> differences.add("only the other knows " + code));
        }
        return differences;
    }

    private static TreeMap<String, String> byTechnique(List<Outcome> outcomes) {
        var said = new TreeMap<String, String>();
        for (var outcome : outcomes) {
            var keys = outcome.against().stream().sorted().toList();
            said.put(outcome.technique(), outcome.verdict() + " " + keys);
        }
        return said;
    }
}
