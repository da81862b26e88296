package org.ripewood.core.progress;

import org.ripewood.course.TaughtRules;

import java.util.List;
import java.util.Set;

/** The course content and the trees that contenders are measured on. */
final class Contest {

    /** Enough for every verdict to come up many times. */
    static final int TREES = 200;

    /** A maple, a pine, a species of the tropics, and one whose flowers decide. */
    static final Set<String> ALL_SORTS =
            Set.of("acer_palmatum", "pinus_thunbergii", "ficus_retusa", "rhododendron_indicum");

    /** Two, so that compilers of running code do not need minutes before all of it is compiled. */
    static final Set<String> MEASURED = Set.of("acer_palmatum", "pinus_thunbergii");

    final Rules rules;
    final List<RandomTrees.Case> trees;

    Contest(Set<String> species) {
        var taught = TaughtRules.read();
        this.rules =
                new Rules(
                        taught.techniques(),
                        taught.species().stream()
                                .filter(traits -> species.contains(traits.species()))
                                .toList());
        this.trees = new RandomTrees(rules).cases(TREES);
    }
}
