package org.ripewood.pictures;

import org.jspecify.annotations.Nullable;

/**
 * A branch on the trunk.
 *
 * @param name what to call it
 * @param role what it is there for, in a word
 * @param temporary whether it is there only for a while, as a sacrifice branch is
 * @param heightMm above the root flare; null when not noted
 * @param bearingDegrees seen from above, clockwise from the front; null when not noted
 * @param diameterMm at its base; null when not measured
 */
public record BranchPlace(
        String name,
        String role,
        boolean temporary,
        @Nullable Double heightMm,
        @Nullable Double bearingDegrees,
        @Nullable Double diameterMm) {

    public BranchPlace {
        Checked.lengths(name, heightMm, diameterMm);
        Checked.bearing(name, bearingDegrees);
    }

    /** What of it is told beside the drawing. */
    String girth(Units units) {
        return diameterMm == null ? "not measured" : "⌀ " + units.length(diameterMm);
    }
}
