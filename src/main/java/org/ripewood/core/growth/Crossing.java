package org.ripewood.core.growth;

import java.util.function.DoubleUnaryOperator;

/** Where a rising function crosses 0. */
final class Crossing {

    private static final int MOST_STEPS = 80;
    private static final double NEAR_ENOUGH = 1e-9;

    private Crossing() {}

    /**
     * False position with Illinois' halving (Dowell and Jarratt 1971, BIT 11:168-174).
     *
     * @param low where the function is below 0
     * @param high where it is not; given back when {@code low} is no such place
     */
    static double of(DoubleUnaryOperator function, double low, double high, double exactTo) {
        double left = low;
        double right = high;
        double below = function.applyAsDouble(left);
        double above = function.applyAsDouble(right);
        for (int i = 0; i < MOST_STEPS && right - left > exactTo && above > below; i++) {
            double middle = (left * above - right * below) / (above - below);
            double there = function.applyAsDouble(middle);
            if (Math.abs(there) < NEAR_ENOUGH) {
                return middle;
            }
            if (there < 0) {
                left = middle;
                below = there;
                above /= 2;
            } else {
                right = middle;
                above = there;
                below /= 2;
            }
        }
        return right;
    }
}
