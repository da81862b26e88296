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

    /** All that is known of a tree on a day; 404 out of reach. */
    public TreeLook look(Actor actor, long treeId, LocalDate on) {
        return gatherer.look(actor, treeId, on);
    }

    /** The same on the day it is at the tree's site. */
    public TreeLook lookToday(Actor actor, long treeId) {
        return gatherer.lookToday(actor, treeId);
    }

    /** How every technique stands for a tree on a day. */
    public TreeStanding of(Actor actor, long treeId, LocalDate on) {
        return look(actor, treeId, on).standing();
    }

    /**
     * READY techniques without an open step, most useful first; none of a tree that left the
     * school.
     */
    public List<TechniqueStanding> proposals(Actor actor, long treeId, LocalDate on) {
        var look = look(actor, treeId, on);
        return look.proposals(look.standing());
    }
}
