package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.core.progress.Work;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;

/** Trees and their record; nothing in it is overwritten. */
@ApplicationScoped
public class Trees {

    /** Enters a site; instructors and registrars only. */
    public Site enterSite(Actor actor, NewSite site) {
        throw new IllegalStateException("to be built");
    }

    /** All sites, by name. */
    public List<Site> sites() {
        throw new IllegalStateException("to be built");
    }

    /** Enters a tree. */
    public Tree enter(Actor actor, NewTree tree) {
        throw new IllegalStateException("to be built");
    }

    /** A tree within reach; 404 otherwise. */
    public Tree get(Actor actor, long treeId) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Trees within reach by label; of one keeper when given, of the students of one course when
     * given.
     */
    public Paged<Tree> list(
            Actor actor, @Nullable Long keeperId, @Nullable Long courseId, PageRequest page) {
        throw new IllegalStateException("to be built");
    }

    /** Trees of these keepers by id of tree; no reach is asked, callers have checked the course. */
    public List<Tree> ofKeepers(Collection<Long> keeperIds) {
        throw new IllegalStateException("to be built");
    }

    /** Changes label, site, origin and note; 412 when the version is not the current one. */
    public Tree change(Actor actor, long treeId, long version, NewTree tree) {
        throw new IllegalStateException("to be built");
    }

    /** Records an observation, or a correction of one. */
    public Observation observe(Actor actor, long treeId, NewObservation observation) {
        throw new IllegalStateException("to be built");
    }

    /** Observations, latest first, corrected ones included and marked. */
    public Paged<Observation> observations(Actor actor, long treeId, PageRequest page) {
        throw new IllegalStateException("to be built");
    }

    /** Enters a wound. */
    public Wound addWound(Actor actor, long treeId, NewWound wound) {
        throw new IllegalStateException("to be built");
    }

    /** Wounds with their readings, oldest first. */
    public List<Wound> wounds(Actor actor, long treeId) {
        throw new IllegalStateException("to be built");
    }

    /** Enters a branch. */
    public Branch addBranch(Actor actor, long treeId, NewBranch branch) {
        throw new IllegalStateException("to be built");
    }

    /** Branches with their latest readings. */
    public List<Branch> branches(Actor actor, long treeId) {
        throw new IllegalStateException("to be built");
    }

    /** Moves a tree to another container. */
    public ContainerStay moveTo(Actor actor, long treeId, NewContainer container) {
        throw new IllegalStateException("to be built");
    }

    /** Containers, latest first. */
    public List<ContainerStay> containers(Actor actor, long treeId) {
        throw new IllegalStateException("to be built");
    }

    /** Records work done; `clock` is the technique's, null for none. */
    public WorkDone recordWork(
            Actor actor, long treeId, Work work, @Nullable String clock, @Nullable String note) {
        throw new IllegalStateException("to be built");
    }

    /** Work done, latest first. */
    public List<WorkDone> works(Actor actor, long treeId) {
        throw new IllegalStateException("to be built");
    }

    /** Sets facts as the effect of signed-off work, as seen by the instructor on that day. */
    public void setFacts(
            Actor actor, long treeId, Map<Fact, Value> facts, LocalDate on, String note) {
        throw new IllegalStateException("to be built");
    }

    /** The tree on a day. */
    public TreeState stateOn(Actor actor, long treeId, LocalDate on) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Many trees on a day, in a number of queries that does not depend on how many; no reach is
     * asked.
     */
    public Map<Long, TreeState> statesOn(Collection<Long> treeIds, LocalDate on) {
        throw new IllegalStateException("to be built");
    }
}
