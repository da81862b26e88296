package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Reach;

/** Trees within reach on a day, and what growing will bring about on them. */
@ApplicationScoped
@Transactional
public class TreeStates {

    private final Reach reach;
    private final StatesUnchecked states;

    TreeStates(Reach reach, StatesUnchecked states) {
        this.reach = reach;
        this.states = states;
    }

    /** A tree on a day; 404 out of reach. */
    public TreeState on(Actor actor, long treeId, LocalDate on) {
        reach.require(actor, treeId);
        return Objects.requireNonNull(states.on(List.of(treeId), on).get(treeId));
    }

    /** How the wounds of a tree are going to close, and how its trunk thickens. */
    public Growth growth(Actor actor, long treeId, LocalDate on) {
        reach.require(actor, treeId);
        return states.growth(treeId, on);
    }

    /** How one wound is going to close; 404 when the tree has no such wound on the day. */
    public Closing closing(Actor actor, long treeId, long woundId, LocalDate on) {
        return growth(actor, treeId, on).closings().stream()
                .filter(closing -> closing.wound().id() == woundId)
                .findFirst()
                .orElseThrow(() -> Refused.notFound("wound", woundId));
    }
}
