package org.ripewood.core.supply;

import org.jspecify.annotations.Nullable;

/**
 * A component of mixes.
 *
 * @param dryKgPerLitre bulk density: oven-dry mass of a litre; null when nobody weighed it
 * @param capacityShare container capacity: the share of its volume that is water after it drained,
 *     0 to 1; null when not known
 * @param airShare air space: the share of its volume that is air after it drained, 0 to 1; null
 *     when not known
 * @param bagLitres what a bag holds; null when it does not come in bags
 */
public record Substrate(
        String name,
        @Nullable Span dryKgPerLitre,
        @Nullable Span capacityShare,
        @Nullable Span airShare,
        @Nullable Double bagLitres) {

    /**
     * @throws IllegalArgumentException when a share is above 1, both together are more than the
     *     whole, or a bag holds nothing
     */
    public Substrate {
        requireShare(name, capacityShare);
        requireShare(name, airShare);
        if (capacityShare != null
                && airShare != null
                && !(capacityShare.low() + airShare.low() <= 1)) {
            throw new IllegalArgumentException(
                    "water and air of %s are more than the whole: %s and %s"
                            .formatted(name, capacityShare, airShare));
        }
        if (bagLitres != null && !(bagLitres > 0 && bagLitres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a bag of %s holds more than 0 litres, found %s".formatted(name, bagLitres));
        }
    }

    private static void requireShare(String name, @Nullable Span share) {
        if (share != null && !(share.high() <= 1)) {
            throw new IllegalArgumentException(
                    "a share of %s is 0 to 1, found %s".formatted(name, share));
        }
    }
}
