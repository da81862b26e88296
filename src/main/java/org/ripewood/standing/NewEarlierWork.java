package org.ripewood.standing;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Work that was done without a step, to be entered.
 *
 * @param foliagePercent share of the foliage taken, in per cent; what the technique usually takes
 *     when left out
 * @param rootPercent likewise of the roots
 * @param countsAsDone whether the technique counts as done on the tree from then on, which only an
 *     instructor may say; no when left out
 */
public record NewEarlierWork(
        @NotBlank @Size(max = 60) String technique,
        @NotNull LocalDate doneOn,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double foliagePercent,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double rootPercent,
        @Nullable Boolean countsAsDone,
        @Nullable @Size(max = 2000) String note) {}
