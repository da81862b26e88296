package org.ripewood.web.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import org.ripewood.platform.Actor;
import org.ripewood.trees.Tree;
import org.ripewood.trees.Trees;
import org.ripewood.web.kit.EditConflicts;
import org.ripewood.web.kit.FormState;
import org.ripewood.web.kit.Label;

/**
 * What stands now of a tree that somebody changed while another gave it away: whose it is, and what
 * is said of it.
 */
@ApplicationScoped
class TreeClashes {

    private static final List<Label> SAID_OF_IT =
            List.of(
                    Label.of("label", "What it is called"),
                    Label.of("origin", "Where it came from"),
                    Label.of("treeNote", "What is said of it"));

    private final Trees trees;
    private final EditConflicts clashes;

    TreeClashes(Trees trees, EditConflicts clashes) {
        this.trees = trees;
        this.clashes = clashes;
    }

    /**
     * The form as it was sent, mended when it was stale.
     *
     * @param own the form's own fields; {@code keeperId} among them stands beside the keeper of now
     */
    FormState mend(Actor actor, Tree tree, FormState typed, List<Label> own) {
        var now =
                FormState.fresh(typed.form())
                        .with("version", tree.version())
                        .with("keeperId", tree.keeperId())
                        .with("label", tree.label())
                        .withIfKnown("origin", tree.origin())
                        .withIfKnown("treeNote", tree.note());
        var labels = new ArrayList<>(own);
        labels.addAll(SAID_OF_IT);
        return clashes.mend(
                typed,
                now,
                new EditConflicts.About(
                        "tree", tree.id(), labels, ids -> trees.names(actor, tree.id(), ids)));
    }
}
