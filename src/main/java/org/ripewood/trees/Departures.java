package org.ripewood.trees;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;

/** Lets trees leave the school. Called within the façade's transaction. */
@ApplicationScoped
@Transactional
public class Departures {

    private final TreeRows rows;
    private final TreeKeepingRows keepings;
    private final DepartureRows departures;
    private final FormerKeepers formerKeepers;
    private final WordsBook words;
    private final Reach reach;
    private final Days days;
    private final Event<TreeLeft> left;
    private final Today today;

    Departures(
            TreeRows rows,
            TreeKeepingRows keepings,
            DepartureRows departures,
            FormerKeepers formerKeepers,
            WordsBook words,
            Reach reach,
            Days days,
            Event<TreeLeft> left,
            Today today) {
        this.rows = rows;
        this.keepings = keepings;
        this.departures = departures;
        this.formerKeepers = formerKeepers;
        this.words = words;
        this.reach = reach;
        this.days = days;
        this.left = left;
        this.today = today;
    }

    /**
     * Lets a tree within reach leave the school. Its record is closed from then on and stays to be
     * read; {@link TreeLeft} is told to other rooms. 409 when it left already, 412 when the version
     * is not the current one.
     */
    public Tree leave(Actor actor, long treeId, long version, NewDeparture going) {
        var row = rows.findById(treeId, LockModeType.PESSIMISTIC_WRITE);
        reach.requireHere(actor, treeId);
        if (row.version != version) {
            throw Refused.stale("tree");
        }
        days.requireHappened("leftOn", going.leftOn(), treeId);
        days.requireFrom(keepings.lastDay(row), Days.KEPT_SINCE, "leftOn", going.leftOn());
        row.leftOn = going.leftOn();
        var departure = new DepartureEntity();
        departure.treeId = treeId;
        departure.leftOn = going.leftOn();
        departure.how = going.how();
        departure.note = noteOf(going.note());
        departure.byId = actor.personId();
        departure.recordedAt = today.now();
        departures.persist(departure);
        rows.flush();
        left.fire(new TreeLeft(actor, treeId, going.leftOn()));
        return words.told(actor, row);
    }

    /** When a tree within reach left the school and how, the last time first. */
    public List<Departure> of(Actor actor, long treeId) {
        var hidden = formerKeepers.hidden(actor, reach.known(actor, treeId).former());
        return departures.ofTree(treeId).stream().map(row -> row.toDeparture(hidden)).toList();
    }

    private static @Nullable String noteOf(@Nullable String typed) {
        return typed == null || typed.isBlank() ? null : typed.strip();
    }
}
