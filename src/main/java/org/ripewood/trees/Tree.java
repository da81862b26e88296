package org.ripewood.trees;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A tree in training.
 *
 * @param origin where it came from, in somebody's own words; null also where these are not for the
 *     reader
 * @param note likewise
 * @param leftOn the day it left the school; null while it is there
 */
public record Tree(
        long id,
        long version,
        String label,
        String species,
        long keeperId,
        long siteId,
        LocalDate cameOn,
        @Nullable String origin,
        @Nullable String note,
        @Nullable LocalDate leftOn) {

    /** Whether it left the school and is not back. */
    public boolean left() {
        return leftOn != null;
    }
}
