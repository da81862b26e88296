package org.ripewood.core.growth;

import java.util.SplittableRandom;

/** Years that differ: each makes more or less of its growth-time, drawn when it is first needed. */
final class DrawnYears {

    private static final int MOST = 2_000;

    private final double[] shares = new double[MOST];
    private final SplittableRandom dice;
    private final double spread;
    private final double year;
    private int drawn;

    /**
     * @param spread standard deviation of a year's share about 1, of seven trees in ten; two stray
     *     twice as much, one four times, as is believed
     * @param year growth-time of a mean year
     */
    DrawnYears(SplittableRandom dice, double spread, double year) {
        this.dice = dice.split();
        double drawn = this.dice.nextDouble();
        this.spread = spread * (drawn < 0.7 ? 1 : drawn < 0.9 ? 2 : 4);
        this.year = year;
    }

    /** What growth-time x has come to, in mean growth-time. */
    double grown(double x) {
        double grown = 0;
        int season = 0;
        for (; (season + 1) * year < x; season++) {
            grown += share(season) * year;
        }
        return grown + share(season) * (x - season * year);
    }

    /** The growth-time that comes to so much; infinite beyond two thousand years. */
    double reaching(double grown) {
        double left = grown;
        for (int season = 0; season < MOST; season++) {
            double whole = share(season) * year;
            if (whole >= left) {
                return (season + left / whole) * year;
            }
            left -= whole;
        }
        return Double.POSITIVE_INFINITY;
    }

    private double share(int season) {
        while (drawn <= season) {
            shares[drawn++] = Math.max(0.05, 1 + spread * dice.nextGaussian());
        }
        return shares[season];
    }
}
