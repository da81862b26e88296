package org.ripewood.standing;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.ripewood.records.WorkDone;
import org.ripewood.steps.StepBrief;
import org.ripewood.steps.StepState;

/**
 * Work on a tree's record, and whether an instructor signed it off; what somebody entered as work
 * of earlier nobody did.
 */
public record WorkTold(WorkDone work, boolean signedOff) {

    /**
     * Works with what their tree's steps say of them. A work is of the step that was signed off for
     * the same technique and day: {@link EarlierWorks} enters no second one.
     */
    static List<WorkTold> of(List<WorkDone> works, Collection<StepBrief> steps) {
        return works.stream()
                .map(work -> new WorkTold(work, steps.stream().anyMatch(step -> isOf(work, step))))
                .toList();
    }

    private static boolean isOf(WorkDone work, StepBrief step) {
        return step.state() == StepState.SIGNED_OFF
                && step.technique().equals(work.work().technique())
                && Objects.equals(step.doneOn(), work.doneOn());
    }
}
