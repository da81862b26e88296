package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.SteadyRate.Seasons;

@Tag("fast")
class SteadyRateTest {

    /**
     * Eight pairs with a known error of 1: the example data of R package Bolstad, bayes.lin.reg.
     */
    private static final double[] X = {11, 9, 9, 9, 9, 12, 11, 9};

    private static final double UNKNOWN = -1;

    private static final double[] Y = {-21.6, -16.2, -19.5, -16.3, -18.3, -24.6, -22.6, -17.7};

    /**
     * The normal prior of that example, mean 0 and standard deviation 3 on the slope. A prior is
     * one more reading of the slope alone (Bolstad and Curran 2016, Introduction to Bayesian
     * Statistics, ch. 14), so that Hipparchus' QR solves for it; to a thousandth, as the rate is
     * cut off at 0 and summed over a few values.
     */
    @Test
    void withoutSeasonsTheRateIsThatOfConjugateRegression() {
        var rows = new double[X.length + 1][];
        var right = new double[X.length + 1];
        for (int i = 0; i < X.length; i++) {
            rows[i] = new double[] {1, -X[i]};
            right[i] = Y[i];
        }
        rows[X.length] = new double[] {0, 1.0 / 3};
        var design = new Array2DRowRealMatrix(rows);
        var solver = new QRDecomposition(design).getSolver();
        double rate = solver.solve(new ArrayRealVector(right)).getEntry(1);
        var normal = design.transposeMultiply(design);
        double rateSd =
                Math.sqrt(new QRDecomposition(normal).getSolver().getInverse().getEntry(1, 1));
        var learnt = sorted(0, 3, 0);
        assertThat(learnt.rate()).isCloseTo(rate, within(0.001));
        assertThat(learnt.rateSd()).isCloseTo(rateSd, within(0.001));
    }

    private static SteadyRate sorted(double priorRate, double priorRateSd, double seasonSpread) {
        var x = new double[] {9, 9, 9, 9, 9, 11, 11, 12};
        var y = new double[] {-16.2, -19.5, -16.3, -18.3, -17.7, -21.6, -22.6, -24.6};
        return learnt(x, y, priorRate, priorRateSd, 1, seasonSpread, 1);
    }

    /** Of years that are not known to be alike several sizes are weighed. */
    private static YearSpread years(double spread) {
        return spread == UNKNOWN ? YearSpread.UNKNOWN : YearSpread.exactly(spread);
    }

    private static SteadyRate learnt(
            double[] x,
            double[] y,
            double rate,
            double rateSd,
            double measuringSd,
            double seasonSpread,
            double pace) {
        return new SteadyRate(
                Readings.of(x, y, measuringSd),
                new SeasonShare.Believed(rate, rateSd),
                new Seasons(years(seasonSpread), pace, 0.6 * pace, 1),
                List.of(new SteadyRate.Case(Pace.STEADY, 1)));
    }

    /** Where the last season went slowly, what is ahead starts from where it ended. */
    @Test
    void theWidthAheadStartsWhereItWasLastSeen() {
        double[] x = {0, 1, 2, 3, 4};
        double[] slowing = {24, 17, 12, 10, 9.5};
        var seasons = learnt(x, slowing, 4, 2, 0.5, UNKNOWN, 4);
        var line = learnt(x, slowing, 4, 2, 0.5, 0, 4);
        assertThat(seasons.widthAt(4, 0.5)).isCloseTo(9.5, within(0.5));
        assertThat(line.widthAt(4, 0.5)).isLessThan(8.7);
    }

    @Test
    void oneReadingHasTheBeliefAlone() {
        var learnt = learnt(new double[] {0}, new double[] {20}, 4, 1, 0.5, 0.15, 4);
        assertThat(learnt.rate()).isCloseTo(4, within(0.01));
        assertThat(learnt.rateSd()).isCloseTo(1, within(0.02));
    }

    /**
     * What seasons add: the more they differ, the less sure the width to come, whatever is read.
     */
    @Test
    void seasonsThatDifferMoreNeverMakeTheWayAheadSurer() {
        var dice = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            double[] x = {0, dice.nextDouble(0.2, 1), dice.nextDouble(1, 2)};
            double[] y = {30, dice.nextDouble(22, 28), dice.nextDouble(12, 22)};
            double before = 0;
            for (double spread : new double[] {0, 0.1, 0.2, 0.4}) {
                var learnt = learnt(x, y, 6, 2.4, 0.5, spread, 6);
                double wide = learnt.widthAt(3, 0.9) - learnt.widthAt(3, 0.1);
                assertThat(wide).as("case %d, spread %s", i, spread).isGreaterThan(before);
                before = wide;
            }
        }
    }
}
