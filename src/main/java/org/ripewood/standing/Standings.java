package org.ripewood.standing;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.PageRequest;
import org.ripewood.platform.Paged;

/** How trees stand, what is assigned, reported and signed off. */
@ApplicationScoped
public class Standings {

    /** How every technique stands for a tree on a day. */
    public TreeStanding of(Actor actor, long treeId, LocalDate on) {
        throw new IllegalStateException("to be built");
    }

    /** READY techniques without an open step, most useful first. */
    public List<TechniqueStanding> proposals(Actor actor, long treeId, LocalDate on) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Assigns a step; instructors who reach the tree only. Every reason against it must be waivable
     * and waived with a reason.
     */
    public Step assign(Actor actor, long treeId, NewAssignment assignment) {
        throw new IllegalStateException("to be built");
    }

    /** Notes that a technique was already done; instructors only. */
    public Step noteFoundDone(
            Actor actor, long treeId, String technique, LocalDate doneOn, @Nullable String note) {
        throw new IllegalStateException("to be built");
    }

    /** A step of a tree within reach; 404 otherwise. */
    public Step getStep(Actor actor, long stepId) {
        throw new IllegalStateException("to be built");
    }

    /** Steps of a tree, latest first. */
    public Paged<Step> steps(Actor actor, long treeId, PageRequest page) {
        throw new IllegalStateException("to be built");
    }

    /**
     * The keeper, or an instructor for them, says the step is done; from ASSIGNED or SENT_BACK. 412
     * when the version is not the current one.
     */
    public Step report(Actor actor, long stepId, long version, NewReport report) {
        throw new IllegalStateException("to be built");
    }

    /**
     * Signs a reported step off: records the work, the wound, the container and the facts it
     * changes. Instructors only.
     */
    public Step signOff(Actor actor, long stepId, long version, @Nullable String note) {
        throw new IllegalStateException("to be built");
    }

    /** Sends a reported step back with a note. Instructors only. */
    public Step sendBack(Actor actor, long stepId, long version, String note) {
        throw new IllegalStateException("to be built");
    }

    /** Takes back a step not yet signed off. Instructors only. */
    public Step withdraw(Actor actor, long stepId, long version, String note) {
        throw new IllegalStateException("to be built");
    }

    /** A decision as it was. */
    public Decision getDecision(Actor actor, long decisionId) {
        throw new IllegalStateException("to be built");
    }

    /** A student's checklist for a tree. */
    public Checklist checklist(Actor actor, long treeId, LocalDate on) {
        throw new IllegalStateException("to be built");
    }

    /** A course's board; instructors of the course and registrars only. */
    public Board board(
            Actor actor,
            long courseId,
            LocalDate on,
            Board.@Nullable Headline headline,
            PageRequest page) {
        throw new IllegalStateException("to be built");
    }

    /** Reported steps that wait for this instructor, oldest first. */
    public Paged<Waiting> waitingSignOffs(Actor actor, PageRequest page) {
        throw new IllegalStateException("to be built");
    }

    /** The plan of a session; instructors of the course and registrars only. */
    public SessionPlan plan(Actor actor, long sessionId) {
        throw new IllegalStateException("to be built");
    }
}
