package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.growth.TaperProfile.Bulge;
import org.ripewood.core.growth.TaperProfile.Reading;

/** The measuring error is common practice, no source. */
@Tag("fast")
class TaperProfileTest {

    @Test
    void oneBulgeBetweenFiftyAndAHundred() {
        assertThat(every50(60, 52, 55, 40).bulges())
                .containsExactly(new Bulge(new Reading(50, 52), new Reading(100, 55)));
    }

    @Test
    void whatACalliperMayBeOffByIsNoBulge() {
        assertThat(every50(60, 52, 54.2, 40).bulges()).as("√(1.56² + 1.63²) is 2.25").isEmpty();
        assertThat(every50(60, 52, 54.3, 40).bulges()).hasSize(1);
        assertThat(every50(12, 10, 10.7, 8).bulges()).as("0.5 mm √2 on a thin trunk").isEmpty();
        assertThat(every50(12, 10, 10.8, 8).bulges()).hasSize(1);
    }

    @Test
    void aTrunkThatSwellsALittleAtEachMarkIsFound() {
        assertThat(every50(60, 50, 51, 52, 53).bulges())
                .containsExactly(new Bulge(new Reading(50, 50), new Reading(200, 53)));
    }

    @Test
    void twoBulgesAreTwo() {
        assertThat(every50(60, 50, 54, 40, 45, 30).bulges())
                .extracting(bulge -> bulge.wide().heightMm())
                .containsExactly(100.0, 200.0);
    }

    @Test
    void oneMarkOrNoneTellsNothing() {
        assertThat(every50().bulges()).isEmpty();
        assertThat(every50(60).bulges()).isEmpty();
        assertThat(every50(60).tapers()).isEmpty();
    }

    @Test
    void taperIsLossOfDiameterOverLength() {
        assertThat(every50(60, 52, 54, 40).tapers()).containsExactly(0.16, -0.04, 0.28);
    }

    /**
     * Ormerod's taper equation d² = D² ((H − h)/(H − 1.3))^1.6 for D = 300 mm, H = 20 m; form
     * quotient at half height 0.60608 (worked from the equation as given in the encyclopaedia entry
     * on tree taper). A trunk that follows it has no bulge.
     */
    @ParameterizedTest
    @CsvSource({"0.3, 312.77", "1.3, 300.00", "5, 251.49", "10, 181.82", "15, 104.43", "20, 0"})
    void aForestersStemHasNoBulge(double heightM, double diameterMm) {
        assertThat(ormerodMm(heightM)).isCloseTo(diameterMm, within(0.01));
        var stem =
                new TaperProfile(
                        IntStream.rangeClosed(0, 40)
                                .mapToObj(i -> new Reading(i * 500.0, ormerodMm(i * 0.5)))
                                .toList());
        assertThat(stem.bulges()).isEmpty();
        assertThat(stem.tapers()).allMatch(taper -> taper > 0);
    }

    @Test
    void theOrderOfReadingsDoesNotMatter() {
        long seed = 7_301;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 300; round++) {
            var readings = new ArrayList<Reading>();
            for (int i = 0; i < dice.nextInt(1, 12); i++) {
                readings.add(new Reading(i * 40, dice.nextDouble(5, 80)));
            }
            var expected = new TaperProfile(readings);
            Collections.shuffle(readings, new Random(dice.nextLong()));
            assertThat(new TaperProfile(readings))
                    .as("seed %d, round %d", seed, round)
                    .isEqualTo(expected);
        }
    }

    /** Φ(1.645) is 0.95 and Φ(2.326) 0.99 in any table of the normal distribution. */
    @Test
    void aBulgeTellsHowSureItIs() {
        double error = Math.sqrt(0.5);
        var justOver = every50(10, 10 + error + 1e-9).bulges().get(0);
        assertThat(justOver.certainty()).isCloseTo(0.95, within(0.0005));
        var clear = every50(10, 10 + error * 2.326 / 1.645).bulges().get(0);
        assertThat(clear.certainty()).isCloseTo(0.99, within(0.0005));
        assertThat(clear.excessMm()).isCloseTo(1.0, within(0.001));
    }

    /** One-sided 95 % of a normal difference: a straight post is called a bulge once in twenty. */
    @Test
    void noiseOnAStraightPostIsABulgeOnceInTwenty() {
        long seed = 55_017;
        var dice = new Random(seed);
        int found = 0;
        int posts = 20_000;
        for (int i = 0; i < posts; i++) {
            double sd = TaperProfile.errorMm(30) / 1.6449;
            found +=
                    every50(30 + sd * dice.nextGaussian(), 30 + sd * dice.nextGaussian())
                            .bulges()
                            .size();
        }
        assertThat((double) found / posts).as("seed %d", seed).isBetween(0.043, 0.057);
    }

    @Test
    void twoDiametersAtOneHeightAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new TaperProfile(List.of(new Reading(50, 30), new Reading(50, 31))));
    }

    private static double ormerodMm(double heightM) {
        return 300 * Math.pow((20 - heightM) / (20 - 1.3), 0.8);
    }

    private static TaperProfile every50(double... diametersMm) {
        return new TaperProfile(
                IntStream.range(0, diametersMm.length)
                        .mapToObj(i -> new Reading(i * 50, diametersMm[i]))
                        .toList());
    }
}
