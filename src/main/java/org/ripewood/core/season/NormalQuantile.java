package org.ripewood.core.season;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Quantiles of the standard normal distribution. */
final class NormalQuantile {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private NormalQuantile() {}

    static double of(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException(
                    "a probability lies between 0 and 1, found " + probability);
        }
        return STANDARD.inverseCumulativeProbability(probability);
    }
}
