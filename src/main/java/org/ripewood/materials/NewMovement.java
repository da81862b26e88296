package org.ripewood.materials;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something that came, went or was counted.
 *
 * @param amount in the item's unit: what came, what went, or all that was found
 * @param on the day it happened
 */
public record NewMovement(
        @NotNull MovementKind kind,
        @NotNull @DecimalMin("0") @DecimalMax("1000000") Double amount,
        @NotNull LocalDate on,
        @Nullable @Size(max = 500) String note) {}
