package org.ripewood.core.growth;

import java.util.SplittableRandom;

/**
 * Trunks that thicken in ways the model does not know of. Their numbers are their own and shared
 * with nothing in the model: trees that gain 1 to 7 mm of diameter a year at first, years that
 * differ by what a test asks for, readings off by half a millimetre. Everything counts in years.
 */
sealed interface Trunks {

    double ERROR_MM = 0.5;

    /** Diameter after so many mean years, without good and bad ones. */
    double diameterMm(Tree tree, double years);

    /**
     * A trunk.
     *
     * @param firstMm diameter at the first reading
     * @param gainMm what it gains in a year then
     * @param endMm what it grows towards; ignored by those that have no end
     */
    record Tree(double firstMm, double gainMm, double endMm) {}

    /** The same gain every year. */
    record Steady() implements Trunks {
        @Override
        public double diameterMm(Tree tree, double years) {
            return tree.firstMm() + tree.gainMm() * years;
        }
    }

    /** A gain in proportion to what is missing to the end. */
    record TowardsAnEnd() implements Trunks {
        @Override
        public double diameterMm(Tree tree, double years) {
            double missing = tree.endMm() - tree.firstMm();
            return tree.endMm() - missing * Math.exp(-tree.gainMm() / missing * years);
        }
    }

    /**
     * Gompertz's curve: a gain in proportion to the diameter and to the logarithm of what is
     * missing (Gompertz 1825, Phil. Trans. R. Soc. 115:513-583).
     */
    record Gompertz() implements Trunks {
        @Override
        public double diameterMm(Tree tree, double years) {
            double left = Math.log(tree.endMm() / tree.firstMm());
            double pace = tree.gainMm() / (tree.firstMm() * left);
            return tree.endMm() * Math.exp(-left * Math.exp(-pace * years));
        }
    }

    /** The same gain of sectional area every year, which slows the diameter without an end. */
    record EqualArea() implements Trunks {
        @Override
        public double diameterMm(Tree tree, double years) {
            double first = tree.firstMm();
            return Math.sqrt(first * first + 2 * first * tree.gainMm() * years);
        }
    }

    /** Mean years gone by, year by year, when each counts more or less. */
    static double[] seasons(int years, double yearSd, SplittableRandom dice) {
        var gone = new double[years + 1];
        for (int i = 0; i < years; i++) {
            double share = yearSd > 0 ? Wounds.gamma(dice, 1 / (yearSd * yearSd)) : 1;
            gone[i + 1] = gone[i] + share;
        }
        return gone;
    }

    /** Mean years gone by at a moment, on a straight line within a year. */
    static double gone(double[] seasons, double years) {
        int whole = (int) Math.min(seasons.length - 2, years);
        return seasons[whole] + (years - whole) * (seasons[whole + 1] - seasons[whole]);
    }
}
