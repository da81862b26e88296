package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.List;
import org.ripewood.people.People;
import org.ripewood.people.Person;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Refused;
import org.ripewood.platform.Today;

/** Hands trees over. Called within the façade's transaction. */
@ApplicationScoped
class HandOverBook {

    private final TreeRows rows;
    private final TreeKeepingRows keepings;
    private final People people;
    private final Reach reach;
    private final Days days;
    private final Today today;

    HandOverBook(
            TreeRows rows,
            TreeKeepingRows keepings,
            People people,
            Reach reach,
            Days days,
            Today today) {
        this.rows = rows;
        this.keepings = keepings;
        this.people = people;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    /** Locked first, so that of two who change it at once the second hears of the first. */
    Tree handOver(Actor actor, long treeId, long version, HandOver to) {
        var row = rows.findById(treeId, LockModeType.PESSIMISTIC_WRITE);
        reach.require(actor, treeId);
        if (row.version != version) {
            throw Refused.stale("tree");
        }
        requireReceiver(actor, row, to.keeperId());
        requireDay(row, to);
        row.keeperId = to.keeperId();
        var keeping = new TreeKeepingEntity();
        keeping.treeId = treeId;
        keeping.keeperId = to.keeperId();
        keeping.since = to.since();
        keeping.byId = actor.personId();
        keeping.recordedAt = today.now();
        keepings.persist(keeping);
        rows.flush();
        return row.toTree();
    }

    List<Person> receivers(Actor actor, long treeId) {
        var keeper = reach.tree(actor, treeId).keeperId;
        return people.fellows(actor).stream().filter(person -> person.id() != keeper).toList();
    }

    private void requireReceiver(Actor actor, TreeEntity row, long keeperId) {
        if (row.keeperId == keeperId) {
            throw Refused.invalid("keeperId", "expected another keeper than the one of now");
        }
        if (!people.isFellow(actor, keeperId)) {
            throw Refused.notFound("person", keeperId);
        }
    }

    private void requireDay(TreeEntity row, HandOver to) {
        days.requireHappened("since", to.since());
        var kept = keepings.ofTrees(List.of(row.id));
        var last = kept.isEmpty() ? row.cameOn : kept.get(kept.size() - 1).since;
        if (to.since().isBefore(last)) {
            throw Refused.invalid(
                    "since",
                    "expected %s, when the keeper of now began, or later, found %s"
                            .formatted(last, to.since()));
        }
    }
}
