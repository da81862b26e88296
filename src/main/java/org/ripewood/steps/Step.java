package org.ripewood.steps;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A technique assigned for a tree, with all that happened to it. */
public record Step(
        long id,
        long version,
        long treeId,
        String technique,
        StepState state,
        long assignedById,
        LocalDate assignedOn,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable String note,
        @Nullable Long decisionId,
        List<Waiver> waivers,
        @Nullable Report report,
        List<Event> events) {

    /** A reason an instructor let pass, and why. */
    public record Waiver(String reasonKey, String why, long byId, LocalDate on) {}

    /** What the student says was done; the latest report of the step. */
    public record Report(
            LocalDate doneOn,
            String evidence,
            @Nullable Double foliageShare,
            @Nullable Double rootShare,
            @Nullable WoundMade wound,
            @Nullable ContainerTaken container,
            long byId,
            Instant reportedAt) {}

    public record WoundMade(String place, double widthMm, double lengthMm) {}

    public record ContainerTaken(
            String kind, @Nullable String description, @Nullable Double litres) {}

    /** Who did what when. */
    public record Event(StepState became, long byId, Instant at, @Nullable String note) {}
}
