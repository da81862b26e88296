package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import org.ripewood.trees.TreeLeft;

/**
 * Takes back what is under way on a tree that leaves the school: nobody can do it or look at it any
 * more. That it was taken back, and why, stays in the step.
 */
@ApplicationScoped
class StepsOfTreesGone {

    private final StepBook steps;
    private final StepWriter writer;

    StepsOfTreesGone(StepBook steps, StepWriter writer) {
        this.steps = steps;
        this.writer = writer;
    }

    void takeBack(@Observes TreeLeft left) {
        for (var step : steps.openToMove(left.treeId())) {
            writer.move(
                    left.by(),
                    step,
                    StepTransition.WITHDRAW,
                    "The tree left the school on %s.".formatted(left.leftOn()));
        }
        steps.flush();
    }
}
