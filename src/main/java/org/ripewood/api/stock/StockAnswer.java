package org.ripewood.api.stock;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.ripewood.materials.StockDetail;
import org.ripewood.materials.StockItem;
import org.ripewood.materials.StockKind;

/**
 * Something in stock; of the four parts the one that belongs to its kind is there, none for tools
 * and supplies.
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record StockAnswer(
        long id,
        long version,
        StockKind kind,
        String name,
        String unit,
        BigDecimal amount,
        StockDetail.@Nullable Container container,
        StockDetail.@Nullable Substrate substrate,
        StockDetail.@Nullable Mix mix,
        StockDetail.@Nullable Wire wire,
        long changedById,
        Instant changedAt) {

    static StockAnswer of(StockItem item) {
        var detail = item.detail();
        return new StockAnswer(
                item.id(),
                item.version(),
                item.kind(),
                item.name(),
                item.unit(),
                item.amount(),
                detail instanceof StockDetail.Container container ? container : null,
                detail instanceof StockDetail.Substrate substrate ? substrate : null,
                detail instanceof StockDetail.Mix mix ? mix : null,
                detail instanceof StockDetail.Wire wire ? wire : null,
                item.changedById(),
                item.changedAt());
    }
}
