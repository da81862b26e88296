package org.ripewood.steps;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a student says was done. Which of the optional fields are needed, the technique says.
 *
 * @param foliagePercent share of the foliage taken, in per cent
 * @param rootPercent share of the roots taken, in per cent
 */
public record NewReport(
        @NotNull LocalDate doneOn,
        @NotBlank @Size(max = 4000) String evidence,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double foliagePercent,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double rootPercent,
        @Nullable @Size(max = 120) String woundPlace,
        @Nullable @DecimalMin("1") @DecimalMax("500") Double woundWidthMm,
        @Nullable @DecimalMin("1") @DecimalMax("500") Double woundLengthMm,
        @Nullable
                @Pattern(
                        regexp = "ground|nursery|training|show",
                        message = "one of ground, nursery, training, show")
                String containerKind,
        @Nullable @Size(max = 200) String containerDescription,
        @Nullable @DecimalMin("0.01") @DecimalMax("5000") Double containerLitres) {}
