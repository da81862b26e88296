package org.ripewood.core.supply;

import org.jspecify.annotations.Nullable;

/**
 * What a tree's next container should be like; each part may be left open.
 *
 * @param depthMm inner depth wanted
 * @param lengthMm longer inner size wanted
 * @param presentDepthMm inner depth of the container it stands in now
 */
public record WantedContainer(
        @Nullable Double depthMm, @Nullable Double lengthMm, @Nullable Double presentDepthMm) {

    /** Of the tree's height or spread (common practice, no source). */
    public static final double LENGTH_SHARE = 2.0 / 3;

    public WantedContainer {
        requireLength("depth", depthMm);
        requireLength("length", lengthMm);
        requireLength("present depth", presentDepthMm);
    }

    /** Whatever the root ball fits into. */
    public static WantedContainer any() {
        return new WantedContainer(null, null, null);
    }

    /**
     * What is usual for a show container: as deep as the trunk is thick at its base, and two thirds
     * as long as the tree is high or wide, whichever is more. Source: common practice, no source.
     */
    public static WantedContainer usual(
            @Nullable Double trunkBaseMm,
            @Nullable Double heightMm,
            @Nullable Double spreadMm,
            @Nullable Double presentDepthMm) {
        double longest = Math.max(heightMm == null ? 0 : heightMm, spreadMm == null ? 0 : spreadMm);
        return new WantedContainer(
                trunkBaseMm, longest == 0 ? null : LENGTH_SHARE * longest, presentDepthMm);
    }

    private static void requireLength(String what, @Nullable Double mm) {
        if (mm != null && !(mm > 0 && mm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a %s is above 0 mm, found %s".formatted(what, mm));
        }
    }
}
