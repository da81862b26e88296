package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ripewood.accounts.People;
import org.ripewood.platform.Actor;
import org.ripewood.steps.Step;
import org.ripewood.trees.Trees;

/**
 * Lays what former keepers wrote, and who they are, out of sight of those who do not reach them.
 */
@ApplicationScoped
public class Veil {

    /** A report always has words; those of a former keeper stay with them. */
    private static final String LEFT = "Told by a former keeper.";

    private final Trees trees;
    private final People people;

    Veil(Trees trees, People people) {
        this.trees = trees;
        this.people = people;
    }

    public Step over(Actor actor, Step step) {
        return over(trees.hiddenKeepers(actor, step.treeId()), step);
    }

    public static Step over(Set<Long> hidden, Step step) {
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
                over(hidden, step.report()),
                step.events().stream().map(event -> over(hidden, event)).toList());
    }

    private static Step.@Nullable Report over(Set<Long> hidden, Step.@Nullable Report report) {
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

    private static Step.Event over(Set<Long> hidden, Step.Event event) {
        return hidden.contains(event.byId())
                ? new Step.Event(event.became(), event.byId(), event.at(), null)
                : event;
    }

    /** A decision was told with names while its tree was another's. */
    public Decision over(Actor actor, Decision decision) {
        var hidden = trees.hiddenKeepers(actor, decision.treeId());
        if (hidden.isEmpty()) {
            return decision;
        }
        var former = people.names(hidden).values();
        var told = trees.names(actor, decision.treeId(), hidden).values().iterator().next();
        var standing = decision.standing();
        return decision.with(
                standing.withReasons(
                        standing.reasons().stream()
                                .map(
                                        reason ->
                                                former.contains(
                                                                Objects.requireNonNullElse(
                                                                        reason.by(), ""))
                                                        ? reason.withBy(told)
                                                        : reason)
                                .toList()));
    }
}
