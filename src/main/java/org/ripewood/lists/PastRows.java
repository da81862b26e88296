package org.ripewood.lists;

import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.progress.Fact;
import org.ripewood.lists.ListText.Row;
import org.ripewood.platform.Actor;
import org.ripewood.platform.problems.Inputs;
import org.ripewood.platform.problems.Suggestion;
import org.ripewood.records.Branch;
import org.ripewood.records.BranchRole;
import org.ripewood.records.Branches;
import org.ripewood.records.Containers;
import org.ripewood.records.NewBranch;
import org.ripewood.records.NewContainer;
import org.ripewood.records.NewObservation;
import org.ripewood.records.Observations;
import org.ripewood.standing.EarlierWorks;
import org.ripewood.standing.NewEarlierWork;

/** Enters rows of a tree's past: work, branches, what it stood in. */
@Singleton
class PastRows {

    private final EarlierWorks works;
    private final Branches branches;
    private final Containers containers;
    private final Observations observations;
    private final Inputs inputs;

    PastRows(
            EarlierWorks works,
            Branches branches,
            Containers containers,
            Observations observations,
            Inputs inputs) {
        this.works = works;
        this.branches = branches;
        this.containers = containers;
        this.observations = observations;
        this.inputs = inputs;
    }

    void enterWork(Actor actor, long treeId, Row row) {
        works.enter(
                actor,
                treeId,
                inputs.check(
                        new NewEarlierWork(
                                row.cell("technique"),
                                RowCells.day(row, "done_on"),
                                RowCells.number(row, "foliage_percent"),
                                RowCells.number(row, "root_percent"),
                                RowCells.yes(row, "counts_as_done"),
                                row.cells().get("note"))));
    }

    /** A diameter is kept as it was measured; the trunk's beside it as well. */
    void enterBranch(Actor actor, long treeId, Row row) {
        var diameter = RowCells.number(row, "diameter_mm");
        var trunk = RowCells.number(row, "trunk_mm");
        var measuredOn = RowCells.dayIfSaid(row, "measured_on");
        if ((diameter != null || trunk != null) && measuredOn == null) {
            throw RowCells.faulty(
                    row, "measured_on", "expected the day it was measured, found nothing");
        }
        var branch =
                branches.add(
                        actor,
                        treeId,
                        inputs.check(
                                new NewBranch(
                                        row.cell("name"),
                                        role(row),
                                        RowCells.number(row, "height_mm"),
                                        RowCells.number(row, "bearing_degrees"),
                                        RowCells.dayIfSaid(row, "entered_on"))));
        measure(actor, branch, Fact.BRANCH_DIAMETER_MM, diameter, measuredOn);
        measure(actor, branch, Fact.TRUNK_AT_BRANCH_MM, trunk, measuredOn);
    }

    private static BranchRole role(Row row) {
        var typed = row.cell("role").toLowerCase(Locale.ROOT);
        var roles =
                Arrays.stream(BranchRole.values())
                        .map(role -> role.name().toLowerCase(Locale.ROOT))
                        .toList();
        if (!roles.contains(typed)) {
            throw RowCells.faulty(
                    row,
                    "role",
                    "expected one of %s, found “%s”.%s"
                            .formatted(
                                    String.join(", ", roles),
                                    row.cell("role"),
                                    Suggestion.maybe(roles, typed)));
        }
        return BranchRole.valueOf(typed.toUpperCase(Locale.ROOT));
    }

    private void measure(
            Actor actor,
            Branch branch,
            Fact fact,
            @Nullable Double millimetres,
            @Nullable LocalDate on) {
        if (millimetres == null || on == null) {
            return;
        }
        observations.observe(
                actor,
                branch.treeId(),
                inputs.check(
                        new NewObservation(
                                fact.code(),
                                millimetres.toString(),
                                on,
                                null,
                                null,
                                branch.id(),
                                null,
                                null)));
    }

    void enterContainer(Actor actor, long treeId, Row row) {
        var description = row.cell("description");
        containers.moveTo(
                actor,
                treeId,
                inputs.check(
                        new NewContainer(
                                row.cell("kind"),
                                description.isEmpty() ? null : description,
                                RowCells.number(row, "litres"),
                                RowCells.day(row, "since"))));
    }
}
