package org.ripewood.records;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A wound to be entered. Length is along the trunk, width across; both at least a millimetre. */
public record NewWound(
        @NotBlank @Size(max = 120) String place,
        @NotNull LocalDate madeOn,
        @NotNull @DecimalMin("1") @DecimalMax("500") Double firstWidthMm,
        @NotNull @DecimalMin("1") @DecimalMax("500") Double firstLengthMm,
        @Nullable @DecimalMin("0") @DecimalMax("5000") Double heightMm,
        @Nullable @DecimalMin("0") @DecimalMax("360") Double bearingDegrees,
        boolean deadwoodByDesign) {}
