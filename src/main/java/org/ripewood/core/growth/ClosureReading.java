package org.ripewood.core.growth;

/**
 * An open width read on a wound.
 *
 * @param growthTime degree-days of the growing season gone by since the wound was made, 0 or more
 * @param openMm open width across the narrowest way, 0 or more; 0 when the lips meet
 */
public record ClosureReading(double growthTime, double openMm) {

    public ClosureReading {
        if (!(growthTime >= 0 && Double.isFinite(growthTime))) {
            throw new IllegalArgumentException(
                    "growth-time since the cut must be 0 or more, found " + growthTime);
        }
        if (!(openMm >= 0 && Double.isFinite(openMm))) {
            throw new IllegalArgumentException("an opening must be 0 mm or more, found " + openMm);
        }
    }
}
