package org.ripewood.pictures;

import org.jspecify.annotations.Nullable;

/**
 * A wound on the trunk.
 *
 * @param name what to call it
 * @param heightMm above the root flare; null when not noted
 * @param bearingDegrees seen from above, clockwise from the front; null when not noted
 * @param widthMm its first width, across the trunk
 * @param lengthMm its first length, along it
 * @param openMm open width now; 0 when closed
 * @param deadwood whether it is meant to stay
 */
public record WoundPlace(
        String name,
        @Nullable Double heightMm,
        @Nullable Double bearingDegrees,
        double widthMm,
        double lengthMm,
        double openMm,
        boolean deadwood) {

    public WoundPlace {
        Checked.lengths(name, heightMm, widthMm, lengthMm, openMm);
        Checked.bearing(name, bearingDegrees);
    }

    /** What of it is told beside the drawing. */
    String state(Units units) {
        if (deadwood) {
            return "deadwood";
        }
        return openMm == 0 ? "closed" : "open " + units.length(openMm);
    }
}
