package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Objects;
import org.ripewood.people.People;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.steps.StepReach;
import org.ripewood.trees.Trees;

/** Decisions as they were, without the names of former keepers for those who do not reach them. */
@ApplicationScoped
@Transactional
public class Decisions {

    private final Trees trees;
    private final People people;
    private final StepReach reach;
    private final DecisionBook decisions;

    Decisions(Trees trees, People people, StepReach reach, DecisionBook decisions) {
        this.trees = trees;
        this.people = people;
        this.reach = reach;
        this.decisions = decisions;
    }

    /** A decision as it was; 404 when its tree is out of reach. */
    public Decision get(Actor actor, long decisionId) {
        var decision =
                decisions
                        .findByIdOptional(decisionId)
                        .orElseThrow(() -> Refused.notFound("decision", decisionId));
        reach.tree(actor, decision.treeId, "decision", decisionId);
        return withoutFormerKeepers(actor, decisions.told(decision));
    }

    /** A decision was made with names in its reasons while its tree was another's. */
    private Decision withoutFormerKeepers(Actor actor, Decision decision) {
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
