package org.ripewood.core.route;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Random numbers that belong to a name and a draw, not to the order they are asked in.
 *
 * <p>A step more or a wait less on the route leaves every other wait's number as it was, so that
 * two routes of one seed can be compared draw by draw. Source of the mixing function: SplitMix64 of
 * Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators", as in {@code
 * java.util.SplittableRandom}; of the names' hash: FNV-1a, 64 bits, over characters.
 */
final class Chance {

    static final double Z_OF_NINE_IN_TEN = 1.2815515655446004;

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final long FNV_BASIS = 0xCBF29CE484222325L;
    private static final long FNV_PRIME = 0x100000001B3L;
    private static final double UNIT = 0x1p-53;

    private Chance() {}

    /** The stream of a name under a seed. */
    static long stream(long seed, String name) {
        long hash = FNV_BASIS;
        for (int i = 0; i < name.length(); i++) {
            hash = (hash ^ name.charAt(i)) * FNV_PRIME;
        }
        return mix(mix(seed + GOLDEN) ^ hash);
    }

    /** A stream's number for a draw, above 0 and below 1. */
    static double uniform(long stream, int draw) {
        return ((mix(stream + GOLDEN * (draw + 1L)) >>> 11) + 0.5) * UNIT;
    }

    /** Where a standard normal variable stands at a probability. */
    static double normal(double uniform) {
        return STANDARD.inverseCumulativeProbability(uniform);
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
