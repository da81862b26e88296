package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import org.ripewood.platform.Actor;

/** How the techniques stand for a tree within reach. */
@ApplicationScoped
@Transactional
public class Standings {

    private final SubjectGatherer gatherer;

    Standings(SubjectGatherer gatherer) {
        this.gatherer = gatherer;
    }

    /** How every technique stands for a tree on a day. */
    public TreeStanding of(Actor actor, long treeId, LocalDate on) {
        var tree = gatherer.one(actor, treeId, on);
        return new TreeStanding(
                treeId,
                on,
                tree.content().revision(),
                tree.standings().stream().map(tree::tell).toList());
    }

    /**
     * READY techniques without an open step, most useful first; none of a tree that left the
     * school.
     */
    public List<TechniqueStanding> proposals(Actor actor, long treeId, LocalDate on) {
        var tree = gatherer.one(actor, treeId, on);
        return tree.tree().left()
                ? List.of()
                : tree.free().stream()
                        .sorted(new Usefulness(tree.content()).mostUsefulFirst())
                        .map(tree::tell)
                        .toList();
    }
}
