package org.ripewood.standing;

import java.time.Instant;
import java.time.LocalDate;

/** A verdict as it was when someone acted on it; never recomputed. */
public record Decision(
        long id,
        long treeId,
        LocalDate on,
        String contentRevision,
        TechniqueStanding standing,
        long byId,
        Instant at) {

    Decision with(TechniqueStanding told) {
        return new Decision(id, treeId, on, contentRevision, told, byId, at);
    }
}
