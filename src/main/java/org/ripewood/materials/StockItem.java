package org.ripewood.materials;

import java.math.BigDecimal;
import java.time.Instant;

/**
 * Something the school has or has had.
 *
 * @param unit what the amount is counted in
 * @param amount in stock by the books; 0 for a mix, which is a recipe
 * @param version of what it is, and not of how much there is
 * @param changedById who said last what it is
 */
public record StockItem(
        long id,
        long version,
        StockKind kind,
        String name,
        String unit,
        BigDecimal amount,
        StockDetail detail,
        long changedById,
        Instant changedAt) {}
