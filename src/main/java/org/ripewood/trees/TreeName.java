package org.ripewood.trees;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A tree as it is found by name.
 *
 * @param keeper the name of whoever keeps it, or kept it last
 * @param leftOn the day it left the school; null while it is there
 */
public record TreeName(
        long id, String label, String species, String keeper, @Nullable LocalDate leftOn) {}
