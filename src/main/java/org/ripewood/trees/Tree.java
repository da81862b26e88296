package org.ripewood.trees;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A tree in training. */
public record Tree(
        long id,
        long version,
        String label,
        String species,
        long keeperId,
        long siteId,
        LocalDate cameOn,
        @Nullable String origin,
        @Nullable String note) {}
