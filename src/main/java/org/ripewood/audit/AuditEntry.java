package org.ripewood.audit;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that was done.
 *
 * @param personId who did it, or in whose name it was tried; null for nobody known
 * @param door method and address it was done by, or {@code import}
 */
public record AuditEntry(
        long id,
        Instant at,
        @Nullable Long personId,
        String door,
        Deed deed,
        List<Change> changes) {

    public AuditEntry {
        changes = List.copyOf(changes);
    }
}
