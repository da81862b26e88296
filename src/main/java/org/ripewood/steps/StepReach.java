package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Who reaches a step, a decision. What is out of reach is told as not there. */
@ApplicationScoped
public class StepReach {

    private static final int NOT_FOUND = 404;

    private final Trees trees;
    private final StepBook steps;

    StepReach(Trees trees, StepBook steps) {
        this.trees = trees;
        this.steps = steps;
    }

    public StepEntity step(Actor actor, long stepId) {
        var step =
                steps.findByIdOptional(stepId).orElseThrow(() -> Refused.notFound("step", stepId));
        tree(actor, step.treeId, "step", stepId);
        return step;
    }

    /** A step nobody else can move meanwhile. */
    StepEntity stepToMove(Actor actor, long stepId) {
        var step = steps.findToMove(stepId).orElseThrow(() -> Refused.notFound("step", stepId));
        tree(actor, step.treeId, "step", stepId);
        trees.requireHere(actor, step.treeId);
        return step;
    }

    /**
     * The tree of something, which is not there for those who do not reach the tree.
     *
     * @param what that something
     */
    public Tree tree(Actor actor, long treeId, String what, long id) {
        try {
            return trees.get(actor, treeId);
        } catch (Refused refused) {
            throw refused.problem().status() == NOT_FOUND ? Refused.notFound(what, id) : refused;
        }
    }
}
