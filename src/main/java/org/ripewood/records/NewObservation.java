package org.ripewood.records;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something seen or measured; source and person are those of the actor.
 *
 * @param fact code of a recordable fact
 * @param value as text: a number with a decimal point, {@code yes} or {@code no}, or one of the
 *     fact's words
 * @param supersedes the entry this one corrects; null for a new one
 */
public record NewObservation(
        @NotBlank @Size(max = 60) String fact,
        @NotBlank @Size(max = 60) String value,
        @NotNull LocalDate observedOn,
        @Nullable @Size(max = 2000) String note,
        @Nullable Long woundId,
        @Nullable Long branchId,
        @Nullable @DecimalMin("0") @DecimalMax("5000") Double heightMm,
        @Nullable Long supersedes) {}
