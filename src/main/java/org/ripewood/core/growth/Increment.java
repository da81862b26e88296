package org.ripewood.core.growth;

/**
 * How much a trunk grows in radius in a year of its place's mean growth-time.
 *
 * @param radialMm half of what the diameter gains, mm, 0 or more
 * @param sdMm its standard deviation, mm, 0 or more
 */
public record Increment(double radialMm, double sdMm) {

    public Increment {
        if (!(radialMm >= 0 && Double.isFinite(radialMm) && sdMm >= 0 && Double.isFinite(sdMm))) {
            throw new IllegalArgumentException(
                    "an increment and its error must be 0 or more, found %s and %s"
                            .formatted(radialMm, sdMm));
        }
    }
}
