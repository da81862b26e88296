package org.ripewood.audit;

import org.jspecify.annotations.Nullable;

/**
 * Rows that were changed alike.
 *
 * @param thing the table they stand in
 * @param firstId of rows whose ids follow each other; null when rows have no id of their own
 * @param lastId the same as the first for a single row
 * @param amount how many
 */
public record Change(
        String thing, Kind kind, @Nullable Long firstId, @Nullable Long lastId, int amount) {

    /** What became of rows. */
    public enum Kind {
        INSERTED,
        CHANGED,
        REMOVED
    }
}
