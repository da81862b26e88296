package org.ripewood.core.growth;

/** The standard normal distribution, quick enough to be asked for thousands of times. */
final class NormalCurve {

    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double FURTHEST = 37;
    private static final double FRACTION_FROM = 7.07106781186547;

    private NormalCurve() {}

    /**
     * The share below z.
     *
     * <p>Hart's rational approximation as given by West 2005, Better approximations to cumulative
     * normal functions, Wilmott Magazine 70-76; good to about 15 digits.
     */
    static double below(double z) {
        double x = Math.abs(z);
        if (x > FURTHEST) {
            return z > 0 ? 1 : 0;
        }
        double tail = Math.exp(-x * x / 2) * (x < FRACTION_FROM ? rational(x) : fraction(x));
        return z > 0 ? 1 - tail : tail;
    }

    private static double rational(double x) {
        double above = 3.52624965998911e-02 * x + 0.700383064443688;
        above = above * x + 6.37396220353165;
        above = above * x + 33.912866078383;
        above = above * x + 112.079291497871;
        above = above * x + 221.213596169931;
        above = above * x + 220.206867912376;
        double below = 8.83883476483184e-02 * x + 1.75566716318264;
        below = below * x + 16.064177579207;
        below = below * x + 86.7807322029461;
        below = below * x + 296.564248779674;
        below = below * x + 637.333633378831;
        below = below * x + 793.826512519948;
        below = below * x + 440.413735824752;
        return above / below;
    }

    private static double fraction(double x) {
        return 1 / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))) / ROOT_OF_TWO_PI;
    }
}
