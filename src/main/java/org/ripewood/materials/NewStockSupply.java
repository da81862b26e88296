package org.ripewood.materials;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * Any other supply.
 *
 * @param name as the techniques of the course content call it among their materials
 * @param unit what it is counted in, such as m, ml or pieces
 */
public record NewStockSupply(
        @NotBlank @Size(max = 120) String name, @NotBlank @Size(max = 20) String unit)
        implements NewStock {

    @Override
    public StockKind kind() {
        return StockKind.SUPPLY;
    }
}
