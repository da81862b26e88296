package org.ripewood.core.growth;

/**
 * How growth-time counts for one width: nothing before a lag, and less of it, or more, as time goes
 * on.
 *
 * @param lag growth-time before anything moves, 0 or more
 * @param slowing by which share of itself the rate falls per unit of growth-time from the start;
 *     below 0 where growth becomes faster
 * @param bending the same for a rate that falls little at first and then ever more, as a share that
 *     has fallen to 0.6 after one over so much growth-time; 0 or more, and 0 where slowing is given
 */
record Pace(double lag, double slowing, double bending) {

    static final Pace STEADY = after(0);

    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);

    /** Steady after a lag. */
    static Pace after(double lag) {
        return new Pace(lag, 0, 0);
    }

    static Pace slowing(double share) {
        return new Pace(0, share, 0);
    }

    static Pace bending(double share) {
        return new Pace(0, 0, share);
    }

    boolean steady() {
        return slowing == 0 && bending == 0;
    }

    /** Growth-time since the lag. */
    double moving(double x) {
        return Math.max(0, x - lag);
    }

    /**
     * What that growth-time m comes to at the first rate: {@code (1 − e^(−k m)) / k} with k the
     * slowing, {@code √(2π) (Φ(b m) − 1/2) / b} with b the bending.
     */
    double gone(double x) {
        double moving = moving(x);
        if (bending > 0) {
            return ROOT_OF_TWO_PI * (NormalCurve.below(bending * moving) - 0.5) / bending;
        }
        return slowing == 0 ? moving : -Math.expm1(-slowing * moving) / slowing;
    }

    /** The rate at x as a share of the first. */
    double at(double x) {
        if (steady()) {
            return 1;
        }
        double moving = moving(x);
        return Math.exp(-slowing * moving - bending * moving * bending * moving / 2);
    }
}
