package org.ripewood.web.many;

import java.util.List;
import org.ripewood.core.progress.Verdict;
import org.ripewood.standing.ReasonView;
import org.ripewood.standing.TechniqueStanding;
import org.ripewood.trees.Tree;

/**
 * How one tree stands for the step that is to be assigned.
 *
 * @param keeper its keeper's name
 */
record AssignLine(Tree tree, String keeper, TechniqueStanding standing) {

    /** Whether it can be given the step without a word more. */
    public boolean ready() {
        return standing.verdict() == Verdict.READY && standing.stepId() == null;
    }

    /** Whether it can be given the step when every reason against it is waived. */
    public boolean waives() {
        return !ready() && standing.stepId() == null && standing.waivable();
    }

    /** Whether it can be chosen at all. */
    public boolean open() {
        return ready() || waives();
    }

    /** Whether there is nothing to be done: it is done, or the tree does not need it. */
    public boolean settled() {
        return standing.verdict() == Verdict.DONE || standing.verdict() == Verdict.NOT_NEEDED;
    }

    /** Reasons against it that nobody may waive. */
    public List<ReasonView> never() {
        return standing.against().stream().filter(reason -> !reason.waivable()).toList();
    }

    /** The field in which the waiver of a reason is typed. */
    public String waiverField(ReasonView reason) {
        return "waivers.%d.%s".formatted(tree.id(), reason.key());
    }
}
