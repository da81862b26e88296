package org.ripewood.condition;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Trees;

/** Trees within reach on a day, and what growing will bring about on them. */
@ApplicationScoped
@Transactional
public class TreeStates {

    private final Trees trees;
    private final StatesUnchecked states;

    TreeStates(Trees trees, StatesUnchecked states) {
        this.trees = trees;
        this.states = states;
    }

    /** A tree on a day; 404 out of reach. */
    public TreeState on(Actor actor, long treeId, LocalDate on) {
        return states.of(trees.reached(actor, treeId), on);
    }

    /** How the wounds of a tree are going to close, and how its trunk thickens. */
    public Growth growth(Actor actor, long treeId, LocalDate on) {
        return on(actor, treeId, on).growth();
    }

    /** How one wound is going to close; 404 when the tree has no such wound on the day. */
    public Closing closing(Actor actor, long treeId, long woundId, LocalDate on) {
        return growth(actor, treeId, on).closings().stream()
                .filter(closing -> closing.wound().id() == woundId)
                .findFirst()
                .orElseThrow(() -> Refused.notFound("wound", woundId));
    }
}
