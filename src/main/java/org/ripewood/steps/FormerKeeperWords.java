package org.ripewood.steps;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Leaves out of a step what former keepers wrote, for those who do not reach them. */
final class FormerKeeperWords {

    /** A report always has words; those of a former keeper stay with them. */
    private static final String LEFT = "Told by a former keeper.";

    private FormerKeeperWords() {}

    static Step leftOut(Set<Long> hidden, Step step) {
        if (hidden.isEmpty()) {
            return step;
        }
        return new Step(
                step.id(),
                step.version(),
                step.treeId(),
                step.technique(),
                step.state(),
                step.assignedById(),
                step.assignedOn(),
                step.from(),
                step.until(),
                step.note(),
                step.decisionId(),
                step.waivers(),
                leftOut(hidden, step.report()),
                step.events().stream().map(event -> leftOut(hidden, event)).toList());
    }

    private static Step.@Nullable Report leftOut(Set<Long> hidden, Step.@Nullable Report report) {
        return report == null || !hidden.contains(report.byId())
                ? report
                : new Step.Report(
                        report.doneOn(),
                        LEFT,
                        report.foliageShare(),
                        report.rootShare(),
                        report.wound(),
                        report.container(),
                        report.byId(),
                        report.reportedAt());
    }

    private static Step.Event leftOut(Set<Long> hidden, Step.Event event) {
        return hidden.contains(event.byId())
                ? new Step.Event(event.became(), event.byId(), event.at(), null)
                : event;
    }
}
