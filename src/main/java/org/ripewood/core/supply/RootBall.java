package org.ripewood.core.supply;

/**
 * A root ball as it will be planted, after the work on it.
 *
 * @param depthMm from its surface to its underside
 */
public record RootBall(Footprint footprint, double depthMm) {

    /**
     * @throws IllegalArgumentException when the depth is not above 0 and finite
     */
    public RootBall {
        if (!(depthMm > 0 && depthMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a depth is above 0 mm, found " + depthMm);
        }
    }

    /** Area times depth, litres. Limits: a ball that narrows below has less. */
    public double litres() {
        return footprint.areaMm2() * depthMm / 1e6;
    }
}
