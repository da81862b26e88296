package org.ripewood.steps;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A technique assigned for a tree, without what happened to it since: enough to list it and to
 * judge by it.
 *
 * @param doneOn as reported last, or as found
 */
public record StepBrief(
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
        @Nullable LocalDate doneOn,
        @Nullable Instant reportedAt) {}
