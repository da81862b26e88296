package org.ripewood.web.trees;

import java.util.List;
import java.util.function.Predicate;
import org.ripewood.standing.TreeLook;
import org.ripewood.steps.StepBrief;
import org.ripewood.web.kit.StepLine;

/** Steps of a tree as pages list them. */
final class StepLines {

    private static final int MOST = 100;

    private StepLines() {}

    /** Those of the latest hundred that are wanted, the latest first. */
    static List<StepLine> of(TreeLook look, Predicate<StepBrief> wanted) {
        var techniques = look.day().content().techniques();
        return look.steps().stream()
                .limit(MOST)
                .filter(wanted)
                .map(step -> new StepLine(step, StepLine.title(techniques, step.technique())))
                .toList();
    }
}
