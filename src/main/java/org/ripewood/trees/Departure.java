package org.ripewood.trees;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * That a tree left the school. It stays on record when the tree comes back.
 *
 * @param note null as well for who does not reach whoever wrote it
 */
public record Departure(
        long id,
        long treeId,
        LocalDate leftOn,
        How how,
        @Nullable String note,
        long byId,
        Instant recordedAt) {

    /** How a tree leaves. */
    public enum How {
        WITH_KEEPER("left with its keeper"),
        GIVEN_AWAY("was sold or given away"),
        DIED("died");

        private final String words;

        How(String words) {
            this.words = words;
        }

        /** As it is told in a sentence of which the tree is the subject. */
        public String words() {
            return words;
        }
    }
}
