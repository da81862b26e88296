package org.ripewood.records;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;
import org.ripewood.platform.Actor;
import org.ripewood.platform.Today;
import org.ripewood.platform.problems.Refused;
import org.ripewood.trees.Days;
import org.ripewood.trees.Reach;

/** Branches that matter to the design. */
@ApplicationScoped
@Transactional
public class Branches {

    private final BranchRows rows;
    private final ObservationRows observations;
    private final Reach reach;
    private final Days days;
    private final Today today;

    Branches(BranchRows rows, ObservationRows observations, Reach reach, Days days, Today today) {
        this.rows = rows;
        this.observations = observations;
        this.reach = reach;
        this.days = days;
        this.today = today;
    }

    /** Enters a branch. */
    public Branch add(Actor actor, long treeId, NewBranch branch) {
        reach.requireHere(actor, treeId);
        var enteredOn = branch.enteredOn();
        if (enteredOn != null) {
            days.requireHappened("enteredOn", enteredOn, treeId);
        }
        var row = new BranchEntity();
        row.treeId = treeId;
        row.name = branch.name();
        row.role = branch.role().name();
        row.heightMm = branch.heightMm();
        row.bearingDegrees = branch.bearingDegrees();
        row.enteredOn = enteredOn == null ? days.at(treeId) : enteredOn;
        row.byId = actor.personId();
        row.recordedAt = today.now();
        rows.persist(row);
        return row.toBranch(null, null);
    }

    /** Notes that a branch was taken off; its readings stay in the record. */
    public Branch takeOff(Actor actor, long treeId, long branchId, LocalDate on) {
        reach.requireHere(actor, treeId);
        days.requireHappened("removedOn", on, treeId);
        var row = rows.findById(branchId);
        if (row == null || row.treeId != treeId) {
            throw Refused.notFound("branch", branchId);
        }
        if (row.removedOn != null) {
            throw Refused.conflict(
                    "The branch was already taken off on %s.".formatted(row.removedOn), null);
        }
        if (on.isBefore(row.enteredOn)) {
            throw Refused.invalid(
                    "removedOn",
                    "the branch was entered on %s; found %s".formatted(row.enteredOn, on));
        }
        row.removedOn = on;
        return told(row, byBranch(readings(treeId)).getOrDefault(row.id, List.of()));
    }

    /** Branches with their latest readings. */
    public List<Branch> of(Actor actor, long treeId) {
        reach.require(actor, treeId);
        var readings = byBranch(readings(treeId));
        return rows.list("treeId = ?1 order by id", treeId).stream()
                .map(row -> told(row, readings.getOrDefault(row.id, List.of())))
                .toList();
    }

    private List<Observation> readings(long treeId) {
        return observations
                .list(
                        "treeId = ?1 and branchId is not null and " + ObservationRows.IN_FORCE,
                        treeId)
                .stream()
                .map(ObservationEntity::toObservation)
                .toList();
    }

    /** Readings of branches, by branch. */
    static Map<Long, List<Observation>> byBranch(List<Observation> seen) {
        return seen.stream()
                .filter(reading -> reading.branchId() != null)
                .collect(Collectors.groupingBy(Observation::branchId));
    }

    /** A branch with the latest of its own readings. */
    static Branch told(BranchEntity row, List<Observation> readings) {
        return row.toBranch(
                latestMm(readings, Fact.BRANCH_DIAMETER_MM),
                latestMm(readings, Fact.TRUNK_AT_BRANCH_MM));
    }

    private static @Nullable Double latestMm(List<Observation> readings, Fact fact) {
        return Readings.latest(readings.stream().filter(seen -> seen.fact() == fact))
                .map(seen -> ((Value.Number) seen.value()).amount())
                .orElse(null);
    }
}
