package org.ripewood.materials;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * A component of mixes. Each property is one value or a range; what nobody measured is left out.
 *
 * @param dryKgPerLitre bulk density: oven-dry mass of a litre
 * @param dryKgPerLitreTo its upper end, where it is a range
 * @param capacityPercent container capacity: water after it drained, percent of its volume
 * @param airPercent air space after it drained, percent of its volume
 * @param bagLitres what a bag holds
 */
public record NewStockSubstrate(
        @NotBlank @Size(max = 120) String name,
        @Nullable @DecimalMin("0.01") @DecimalMax("5") Double dryKgPerLitre,
        @Nullable @DecimalMin("0.01") @DecimalMax("5") Double dryKgPerLitreTo,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double capacityPercent,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double capacityPercentTo,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double airPercent,
        @Nullable @DecimalMin("0") @DecimalMax("100") Double airPercentTo,
        @Nullable @DecimalMin("0.1") @DecimalMax("5000") Double bagLitres)
        implements NewStock {

    @Override
    public StockKind kind() {
        return StockKind.SUBSTRATE;
    }
}
