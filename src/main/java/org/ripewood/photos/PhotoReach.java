package org.ripewood.photos;

import jakarta.enterprise.context.ApplicationScoped;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Role;
import org.ripewood.platform.problems.Refused;
import org.ripewood.records.Wounds;
import org.ripewood.steps.Steps;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;

/** Who reaches a photo: whoever reaches its tree. */
@ApplicationScoped
class PhotoReach {

    private static final int NOT_FOUND = 404;

    private final Trees trees;
    private final Wounds wounds;
    private final Steps steps;
    private final PhotoRows rows;

    PhotoReach(Trees trees, Wounds wounds, Steps steps, PhotoRows rows) {
        this.trees = trees;
        this.wounds = wounds;
        this.steps = steps;
        this.rows = rows;
    }

    /** Goes on only when the tree is within reach; 404 otherwise. */
    void tree(Actor actor, long treeId) {
        trees.get(actor, treeId);
    }

    /** The same of a tree that is at the school; 409 when it left. */
    void treeHere(Actor actor, long treeId) {
        trees.requireHere(actor, treeId);
    }

    /** A photo within reach, or its mark; one out of reach is told like one that is not there. */
    PhotoEntity photo(Actor actor, long photoId) {
        var row =
                rows.findByIdOptional(photoId)
                        .orElseThrow(() -> Refused.notFound("photo", photoId));
        treeOf(actor, row, photoId);
        return row;
    }

    /**
     * A photo of which the actor may change what is said and which they may take away: whoever sent
     * it, who keeps the tree, or an instructor who reaches it.
     */
    PhotoEntity photoToChange(Actor actor, long photoId) {
        var row = rows.findToChange(photoId).orElseThrow(() -> Refused.notFound("photo", photoId));
        var tree = treeOf(actor, row, photoId);
        trees.requireHere(actor, row.treeId);
        if (!mayChange(actor, tree, row.byId)) {
            throw Refused.forbidden(
                    "Only who sent a photo, the keeper of its tree and instructors may change it.");
        }
        return row;
    }

    boolean mayChange(Actor actor, Tree tree, long byId) {
        return actor.is(Role.INSTRUCTOR)
                || actor.personId() == byId
                || actor.personId() == tree.keeperId();
    }

    /** Goes on only when wound and step, where there are any, belong to the tree. */
    void belongs(Actor actor, long treeId, NewPhoto said) {
        var woundId = said.woundId();
        if (woundId != null
                && wounds.of(actor, treeId).stream().noneMatch(one -> one.id() == woundId)) {
            throw Refused.notFound("wound", woundId);
        }
        var stepId = said.stepId();
        if (stepId != null && steps.get(actor, stepId).treeId() != treeId) {
            throw Refused.notFound("step", stepId);
        }
    }

    private Tree treeOf(Actor actor, PhotoEntity row, long photoId) {
        try {
            return trees.get(actor, row.treeId);
        } catch (Refused refused) {
            throw refused.problem().status() == NOT_FOUND
                    ? Refused.notFound("photo", photoId)
                    : refused;
        }
    }
}
