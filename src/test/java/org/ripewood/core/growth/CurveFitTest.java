package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.hipparchus.fitting.PolynomialCurveFitter;
import org.hipparchus.fitting.WeightedObservedPoints;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class CurveFitTest {

    /** R data set Orange: age in days, trunk circumference in mm of five orange trees. */
    private static final double[] AGES = {118, 484, 664, 1004, 1231, 1372, 1582};

    private static final double[][] ORANGE = {
        {30, 58, 87, 115, 120, 142, 145},
        {33, 69, 111, 156, 172, 203, 203},
        {30, 51, 75, 108, 115, 139, 140},
        {32, 62, 112, 167, 179, 209, 214},
        {30, 49, 81, 125, 142, 174, 177}
    };

    private static CurveFit fit(GrowthCurve curve, double[] x, double[] y) {
        return CurveFit.of(curve, x, y).orElseThrow();
    }

    /**
     * Pinheiro and Bates 2000, Mixed-Effects Models in S and S-PLUS, ch. 8, as in nlme's
     * scripts.Rout.save: 192.7 (20.2), 728.8 (107.3), 353.5 (81.5), residual 23.4.
     */
    @Test
    void theOrangeTreesTogetherGrowAsPublished() {
        var x = new double[35];
        var y = new double[35];
        for (int age = 0; age < 7; age++) {
            for (int tree = 0; tree < 5; tree++) {
                x[5 * age + tree] = AGES[age];
                y[5 * age + tree] = ORANGE[tree][age];
            }
        }
        var fit = fit(GrowthCurve.LOGISTIC, x, y);
        assertThat(fit.parameters()[0]).isCloseTo(192.7, within(0.05));
        assertThat(fit.parameters()[1]).isCloseTo(728.8, within(0.05));
        assertThat(fit.parameters()[2]).isCloseTo(353.5, within(0.05));
        assertThat(fit.error(0)).isCloseTo(20.2, within(0.05));
        assertThat(fit.error(1)).isCloseTo(107.3, within(0.05));
        assertThat(fit.error(2)).isCloseTo(81.5, within(0.05));
        assertThat(fit.residualSd()).isCloseTo(23.4, within(0.05));
    }

    /** As above, one tree at a time: published 154, 627, 363 and so on, without decimals. */
    @ParameterizedTest
    @CsvSource({
        "1, 154, 627, 363",
        "2, 219, 700, 332",
        "3, 159, 735, 401",
        "4, 225, 711, 303",
        "5, 207, 861, 380"
    })
    void eachOrangeTreeGrowsAsPublished(int tree, double asymptote, double middle, double scale) {
        var fit = fit(GrowthCurve.LOGISTIC, AGES, ORANGE[tree - 1]);
        assertThat(fit.parameters()[0]).isCloseTo(asymptote, within(0.5));
        assertThat(fit.parameters()[1]).isCloseTo(middle, within(0.5));
        assertThat(fit.parameters()[2]).isCloseTo(scale, within(0.5));
    }

    /**
     * R's example of SSasymp on Loblolly, seed 329 (stats-Ex.Rout.save): Asym 94.1282 (8.4030), R0
     * -8.2508, lrc -3.2176, residual 0.7493 on 3 degrees of freedom; R0 is A (1 − c) and lrc ln k.
     */
    @Test
    void aLoblollyPineGrowsAsPublished() {
        var fit =
                fit(
                        GrowthCurve.SLOWING,
                        new double[] {3, 5, 10, 15, 20, 25},
                        new double[] {3.93, 9.34, 26.08, 37.79, 48.31, 56.43});
        var p = fit.parameters();
        assertThat(p[0]).isCloseTo(94.1282, within(1e-3));
        assertThat(fit.error(0)).isCloseTo(8.4030, within(1e-3));
        assertThat(p[0] * (1 - p[1])).isCloseTo(-8.2508, within(1e-3));
        assertThat(Math.log(p[2])).isCloseTo(-3.2176, within(1e-3));
        assertThat(fit.residualSd()).isCloseTo(0.7493, within(1e-4));
        assertThat(fit.freedom()).isEqualTo(3);
    }

    /** A curve without error gives its own parameters back. */
    @Test
    void aChapmanRichardsCurveIsFoundAgain() {
        var truth = new double[] {80, 0.9, 0.25, 1.6};
        var x = Stream.iterate(0.0, i -> i + 1).limit(16).mapToDouble(i -> i).toArray();
        var y = Arrays.stream(x).map(i -> GrowthCurve.CHAPMAN_RICHARDS.at(i, truth)).toArray();
        var found = fit(GrowthCurve.CHAPMAN_RICHARDS, x, y).parameters();
        for (int i = 0; i < truth.length; i++) {
            assertThat(found[i]).isCloseTo(truth[i], within(1e-3));
        }
    }

    @Test
    void readingsThatCarryNoCurveGiveNone() {
        var x = new double[] {0, 1, 2, 3, 4, 5};
        for (var curve : GrowthCurve.values()) {
            assertThat(CurveFit.of(curve, x, new double[] {0, 0, 0, 0, 0, 0})).isEmpty();
            assertThat(CurveFit.of(curve, new double[6], new double[] {1, 2, 3, 4, 5, 6}))
                    .isEmpty();
            assertThat(CurveFit.of(curve, new double[2], new double[2])).isEmpty();
        }
    }

    /** Worked by hand: means 3 and 4, Sxx 10, Sxy 6, so slope 0.6, level 2.2 and 2.4 left over. */
    @Test
    void aLineIsTheOneOfLeastSquares() {
        var line = LineFit.of(new double[] {1, 2, 3, 4, 5}, new double[] {2, 4, 5, 4, 5});
        assertThat(line.slope()).isCloseTo(0.6, within(1e-12));
        assertThat(line.level()).isCloseTo(2.2, within(1e-12));
        assertThat(line.squares()).isCloseTo(2.4, within(1e-12));
    }

    /** Against the polynomial fitter of Hipparchus 4.0.3, on random readings. */
    @Test
    void aLineAgreesWithAReferenceLibrary() {
        long seed = 60_601;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            int n = dice.nextInt(2, 30);
            var x = dice.doubles(n, 0, 20).toArray();
            var y = dice.doubles(n, 5, 90).toArray();
            var points = new WeightedObservedPoints();
            for (int i = 0; i < n; i++) {
                points.add(x[i], y[i]);
            }
            var reference = PolynomialCurveFitter.create(1).fit(points.toList());
            var line = LineFit.of(x, y);
            assertThat(line.level())
                    .as("seed %d, round %d", seed, round)
                    .isCloseTo(reference[0], within(1e-6 * (1 + Math.abs(reference[0]))));
            assertThat(line.slope())
                    .as("seed %d, round %d", seed, round)
                    .isCloseTo(reference[1], within(1e-6 * (1 + Math.abs(reference[1]))));
        }
    }
}
