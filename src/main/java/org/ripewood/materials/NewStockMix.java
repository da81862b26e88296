package org.ripewood.materials;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.Map;

/**
 * A mix: how many parts by volume of which substrates.
 *
 * @param parts id of a substrate in stock to its parts
 */
public record NewStockMix(
        @NotBlank @Size(max = 120) String name,
        @NotEmpty @Size(max = 20)
                Map<
                                @NotBlank @Size(max = 20) String,
                                @NotNull @DecimalMin("0.01") @DecimalMax("1000") Double>
                        parts)
        implements NewStock {

    @Override
    public StockKind kind() {
        return StockKind.MIX;
    }
}
