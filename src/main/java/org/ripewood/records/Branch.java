package org.ripewood.records;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A branch that matters to the design. */
public record Branch(
        long id,
        long treeId,
        String name,
        BranchRole role,
        @Nullable Double heightMm,
        @Nullable Double bearingDegrees,
        @Nullable LocalDate removedOn,
        @Nullable Double diameterMm,
        @Nullable Double trunkAtNodeMm) {}
