package org.ripewood.records;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** A branch to be entered. */
public record NewBranch(
        @NotBlank @Size(max = 120) String name,
        @NotNull BranchRole role,
        @Nullable @DecimalMin("0") @DecimalMax("5000") Double heightMm,
        @Nullable @DecimalMin("0") @DecimalMax("360") Double bearingDegrees) {}
