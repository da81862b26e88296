package org.ripewood.readiness;

import org.jspecify.annotations.Nullable;

/**
 * Which trees of a sheet are asked for, and in which order; null asks for all.
 *
 * @param heldFrom code of a technique or of a group of work, or {@value #STYLING} for the next
 *     technique of styling
 * @param reason code of what holds them, from that technique where one is asked for
 * @param freeSoon only those nothing of their own is likely to hold from styling by the end of the
 *     season after the coming one
 */
public record ReadinessAsked(
        @Nullable String heldFrom,
        @Nullable String reason,
        boolean freeSoon,
        @Nullable Long student,
        @Nullable String stage,
        @Nullable String species,
        Sort sort) {

    /** All styling: whatever technique of it comes next on a tree. */
    public static final String STYLING = "styling";

    /** In which order trees are told. */
    public enum Sort {
        /** Held from styling first, those the tree itself holds before those that wait. */
        HELD,
        /** Held from styling first, those soonest free before the others. */
        SOONEST,
        /** By the tree's name. */
        NAME
    }

    public static final ReadinessAsked ALL =
            new ReadinessAsked(null, null, false, null, null, null, Sort.HELD);

    public ReadinessAsked {
        heldFrom = kept(heldFrom);
        reason = kept(reason);
        stage = kept(stage);
        species = kept(species);
    }

    /** Whether it leaves any tree out. */
    public boolean narrows() {
        return heldFrom != null
                || reason != null
                || freeSoon
                || student != null
                || stage != null
                || species != null;
    }

    private static @Nullable String kept(@Nullable String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }
}
