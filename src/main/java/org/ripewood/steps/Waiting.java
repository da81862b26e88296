package org.ripewood.steps;

import java.time.Instant;

/** A reported step that waits for an instructor's look. */
public record Waiting(
        long stepId,
        long treeId,
        String tree,
        String student,
        String technique,
        String techniqueTitle,
        Instant reportedAt) {}
