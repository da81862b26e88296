package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.stream.Collectors;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.trees.Days;
import org.ripewood.trees.Reach;
import org.ripewood.trees.ReachedTree;

/** Cuts and how they close. */
@ApplicationScoped
@Transactional
public class Wounds {

    private final WoundRows rows;
    private final ObservationRows observations;
    private final Reach reach;
    private final Days days;
    private final Today today;

    Wounds(WoundRows rows, ObservationRows observations, Reach reach, Days days, Today today) {
        this.rows = rows;
        this.observations = observations;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    /** Enters a wound. */
    public Wound add(Actor actor, long treeId, NewWound wound) {
        reach.requireHere(actor, treeId);
        days.requireHappened("madeOn", wound.madeOn(), treeId);
        var row = new WoundEntity();
        row.treeId = treeId;
        row.place = wound.place();
        row.madeOn = wound.madeOn();
        row.firstWidthMm = wound.firstWidthMm();
        row.firstLengthMm = wound.firstLengthMm();
        row.heightMm = wound.heightMm();
        row.bearingDegrees = wound.bearingDegrees();
        row.deadwoodByDesign = wound.deadwoodByDesign();
        row.source = Reach.sourceOf(actor).name();
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persist(row);
        return row.toWound(List.of());
    }

    /** Wounds with their readings, widest open first, deadwood by design last. */
    public List<Wound> of(Actor actor, long treeId) {
        reach.require(actor, treeId);
        return of(treeId);
    }

    /** The same of a tree that was just reached. */
    public List<Wound> of(ReachedTree reached) {
        return of(reached.tree().id());
    }

    private List<Wound> of(long treeId) {
        var readings =
                observations
                        .list(
                                "treeId = ?1 and woundId is not null and "
                                        + ObservationRows.IN_FORCE,
                                treeId)
                        .stream()
                        .map(ObservationEntity::toObservation)
                        .collect(Collectors.groupingBy(Observation::woundId));
        return rows.list("treeId = ?1 order by madeOn, id", treeId).stream()
                .map(row -> row.toWound(readings.getOrDefault(row.id, List.of())))
                .sorted(Wound.WIDEST_FIRST)
                .toList();
    }
}
