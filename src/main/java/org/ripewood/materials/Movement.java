package org.ripewood.materials;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A change of an item's amount; it is never changed itself.
 *
 * @param amount what came, or below 0 what went; of a count, what it differed by from the books
 * @param left in stock after it; of a count, what was found
 */
public record Movement(
        long id,
        long itemId,
        MovementKind kind,
        BigDecimal amount,
        BigDecimal left,
        LocalDate on,
        @Nullable String note,
        long byId,
        Instant recordedAt) {}
