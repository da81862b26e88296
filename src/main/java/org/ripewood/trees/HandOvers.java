package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.people.Samples;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/**
 * Hands trees over, and takes those in again that left the school: to whom they came back is a
 * keeping of its own. Called within the façade's transaction.
 */
@ApplicationScoped
@Transactional
public class HandOvers {

    private static final String SINCE = "since";

    private final TreeRows rows;
    private final TreeKeepingRows keepings;
    private final People people;
    private final Samples samples;
    private final WordsBook words;
    private final Reach reach;
    private final Days days;
    private final Event<TreeHandedOver> handedOver;
    private final Today today;

    HandOvers(
            TreeRows rows,
            TreeKeepingRows keepings,
            People people,
            Samples samples,
            WordsBook words,
            Reach reach,
            Days days,
            Event<TreeHandedOver> handedOver,
            Today today) {
        this.rows = rows;
        this.keepings = keepings;
        this.people = people;
        this.samples = samples;
        this.words = words;
        this.reach = reach;
        this.days = days;
        this.handedOver = handedOver;
        this.today = today;
    }

    /**
     * Gives a tree within reach another keeper: somebody of the school who may sign in and shares a
     * course with the actor; anybody where a registrar does it. Steps under way stay as they are;
     * {@link TreeHandedOver} is told to other rooms. A tree that left the school is taken in again
     * this way, its last keeper included. 412 when the version is not the current one.
     */
    public Tree handOver(Actor actor, long treeId, long version, HandOver to) {
        var row = rows.findById(treeId, LockModeType.PESSIMISTIC_WRITE);
        reach.require(actor, treeId);
        if (row.version != version) {
            throw Refused.stale("tree");
        }
        if (samples.isMadeUp(row.keeperId)) {
            throw Refused.conflict(
                    "This tree is made up, and stays in the sample course.",
                    "Maybe enter the tree that is meant as one of the school's own.");
        }
        requireReceiver(actor, row, to.keeperId());
        requireDay(row, to.since());
        row.keeperId = to.keeperId();
        row.leftOn = null;
        var keeping = new TreeKeepingEntity();
        keeping.treeId = treeId;
        keeping.keeperId = to.keeperId();
        keeping.since = to.since();
        keeping.byId = actor.personId();
        keeping.recordedAt = today.now();
        keepings.persist(keeping);
        rows.flush();
        handedOver.fire(new TreeHandedOver(treeId, to.keeperId()));
        return words.told(actor, row);
    }

    /** Whom the actor may hand a tree over to, by name. */
    public List<Person> receivers(Actor actor, long treeId) {
        var tree = reach.tree(actor, treeId);
        return people.fellows(actor).stream()
                .filter(person -> tree.leftOn != null || person.id() != tree.keeperId)
                .toList();
    }

    private void requireReceiver(Actor actor, TreeEntity row, long keeperId) {
        if (row.leftOn == null && row.keeperId == keeperId) {
            throw Refused.invalid("keeperId", "expected another keeper than the one of now");
        }
        if (!people.isFellow(actor, keeperId)) {
            throw Refused.notFound("person", keeperId);
        }
    }

    private void requireDay(TreeEntity row, LocalDate since) {
        days.requireHappened(SINCE, since, row.id);
        if (row.leftOn != null) {
            days.requireFrom(row.leftOn, "when the tree left", SINCE, since);
        }
        days.requireFrom(keepings.lastDay(row), Days.KEPT_SINCE, SINCE, since);
    }
}
