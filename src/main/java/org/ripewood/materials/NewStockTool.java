package org.ripewood.materials;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * A tool.
 *
 * @param name as the techniques of the course content call it
 */
public record NewStockTool(@NotBlank @Size(max = 120) String name) implements NewStock {

    @Override
    public StockKind kind() {
        return StockKind.TOOL;
    }
}
