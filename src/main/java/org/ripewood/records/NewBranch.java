package org.ripewood.records;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A branch to be entered.
 *
 * @param enteredOn since when it belongs to the design; today when left out
 */
public record NewBranch(
        @NotBlank @Size(max = 120) String name,
        @NotNull BranchRole role,
        @Nullable @DecimalMin("0") @DecimalMax("5000") Double heightMm,
        @Nullable @DecimalMin("0") @DecimalMax("360") Double bearingDegrees,
        @Nullable LocalDate enteredOn) {

    /** One of today. */
    public NewBranch(
            String name,
            BranchRole role,
            @Nullable Double heightMm,
            @Nullable Double bearingDegrees) {
        this(name, role, heightMm, bearingDegrees, null);
    }
}
