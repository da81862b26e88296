package org.ripewood.core.progress;

import java.util.List;

/**
 * How far a tree is through one stage.
 *
 * @param reasons all of them, met and unmet, in the order they were asked
 */
public record StageStanding(String stage, List<Reason> reasons) {

    public StageStanding {
        reasons = List.copyOf(reasons);
    }

    /** What keeps the tree in the stage: not so, or not known. */
    public List<Reason> missing() {
        return reasons.stream().filter(reason -> reason.truth() != Truth.YES).toList();
    }

    /** Whether the tree has all the stage asks for. */
    public boolean passed() {
        return missing().isEmpty();
    }

    /** How near it is as a whole: the mean over its reasons, 1 when there are none. */
    public double howFar() {
        return reasons.stream().mapToDouble(Reason::howFar).average().orElse(1);
    }

    /** The first of these that a tree has not passed; the last when it has passed all. */
    public static StageStanding current(List<StageStanding> stages) {
        for (var stage : stages) {
            if (!stage.passed()) {
                return stage;
            }
        }
        return stages.get(stages.size() - 1);
    }
}
