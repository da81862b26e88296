package org.ripewood.trees;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A tree that leaves the school.
 *
 * @param leftOn the last day it was at the school
 */
public record NewDeparture(
        @NotNull LocalDate leftOn,
        @NotNull Departure.How how,
        @Nullable @Size(max = 500) String note) {}
