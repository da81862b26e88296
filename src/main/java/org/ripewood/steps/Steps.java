package org.ripewood.steps;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Comparator;
import java.util.List;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;
import org.ripewood.trees.ReachedTree;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Steps of trees within reach, with all that happened to them. */
@ApplicationScoped
@Transactional
public class Steps {

    private final Trees trees;
    private final StepReach reach;
    private final StepBook steps;
    private final StepHistories teller;

    Steps(Trees trees, StepReach reach, StepBook steps, StepHistories teller) {
        this.trees = trees;
        this.reach = reach;
        this.steps = steps;
        this.teller = teller;
    }

    /** A step of a tree within reach; 404 otherwise. */
    public Step get(Actor actor, long stepId) {
        var step = teller.told(reach.step(actor, stepId));
        return FormerKeeperWords.leftOut(trees.hiddenKeepers(actor, step.treeId()), step);
    }

    /** Steps of a tree, latest first. */
    public Paged<Step> of(Actor actor, long treeId, PageRequest page) {
        var hidden = trees.hiddenKeepers(actor, treeId);
        var found =
                teller.told(briefs(treeId, page)).stream()
                        .map(step -> FormerKeeperWords.leftOut(hidden, step))
                        .toList();
        return Paged.of(found, page, steps.count("treeId", treeId));
    }

    private List<StepBrief> briefs(long treeId, PageRequest page) {
        return steps.ofTree(treeId, page).stream().map(StepEntity::brief).toList();
    }

    /** Steps under way on the trees of a keeper within reach, the soonest due first. */
    public List<StepBrief> underWay(Actor actor, long keeperId) {
        var ids = trees.ofKeepers(actor, List.of(keeperId)).stream().map(Tree::id).toList();
        return steps.open(ids).values().stream()
                .flatMap(byTechnique -> byTechnique.values().stream())
                .sorted(
                        Comparator.comparing(
                                        StepBrief::until,
                                        Comparator.nullsLast(Comparator.naturalOrder()))
                                .thenComparing(StepBrief::id))
                .toList();
    }

    /** Every step of a tree within reach, the latest first, without what happened to it since. */
    public List<StepBrief> briefs(Actor actor, long treeId) {
        return briefs(trees.reached(actor, treeId));
    }

    /** The same of a tree that was just reached. */
    public List<StepBrief> briefs(ReachedTree reached) {
        return steps.all(reached.tree().id());
    }
}
