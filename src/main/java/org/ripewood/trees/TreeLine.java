package org.ripewood.trees;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A tree on a list of trees, without what is said of it.
 *
 * @param keeper the name of whoever keeps it
 * @param site the name of where it stands
 */
public record TreeLine(
        long id,
        String label,
        String species,
        long keeperId,
        String keeper,
        String site,
        LocalDate cameOn,
        @Nullable LocalDate leftOn) {}
