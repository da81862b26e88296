package org.ripewood.materials;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.Locale;
import org.ripewood.core.supply.WireMetal;

/** Wire of one metal and thickness, which are its name. */
public record NewStockWire(
        @NotNull WireMetal metal, @NotNull @DecimalMin("0.1") @DecimalMax("20") Double gaugeMm)
        implements NewStock {

    @Override
    public StockKind kind() {
        return StockKind.WIRE;
    }

    /** Such as {@code aluminium wire 2.5 mm}. */
    @Override
    public String name() {
        return "%s wire %s mm"
                .formatted(
                        metal.name().toLowerCase(Locale.ROOT),
                        Amounts.plain(BigDecimal.valueOf(gaugeMm)).toPlainString());
    }
}
