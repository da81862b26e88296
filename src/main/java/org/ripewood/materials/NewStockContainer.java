package org.ripewood.materials;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.supply.Outline;

/**
 * A container, measured inside.
 *
 * @param topLengthMm at the rim; the diameter of a round one
 * @param topWidthMm left out for a round one
 * @param bottomLengthMm left out, with the width, where the walls stand upright
 * @param lipMm left free at the rim for watering; none when left out
 */
public record NewStockContainer(
        @NotBlank @Size(max = 120) String name,
        @NotNull ContainerUse use,
        @NotNull Outline outline,
        @NotNull @DecimalMin("0.1") @DecimalMax("3000") Double topLengthMm,
        @Nullable @DecimalMin("0.1") @DecimalMax("3000") Double topWidthMm,
        @Nullable @DecimalMin("0.1") @DecimalMax("3000") Double bottomLengthMm,
        @Nullable @DecimalMin("0.1") @DecimalMax("3000") Double bottomWidthMm,
        @NotNull @DecimalMin("0.1") @DecimalMax("3000") Double depthMm,
        @Nullable @DecimalMin("0") @DecimalMax("3000") Double lipMm,
        @Nullable @Size(max = 60) String material,
        @Nullable @DecimalMin("0") @DecimalMax("500") Double massKg)
        implements NewStock {

    @Override
    public StockKind kind() {
        return StockKind.CONTAINER;
    }
}
