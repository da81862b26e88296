package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class WireTest {

    private static final double KG_OF_POUND = 0.45359237;
    private static final double M_OF_FOOT = 0.3048;

    /**
     * Published: AWG 14 is 0.0641 in or 1.63 mm (accesscomms.com.au, AWG diameters); 0000 is 0.4600
     * in, 4 is 0.2043, 10 is 0.1019, 12 is 0.0808 (ezcalculator.net, copper wire).
     */
    @ParameterizedTest
    @CsvSource({"14, 0.0641", "-3, 0.4600", "4, 0.2043", "10, 0.1019", "12, 0.0808", "36, 0.0050"})
    void gaugesHaveTheirPublishedThickness(int awg, double inches) {
        assertThat(Gauge.mm(awg)).isCloseTo(25.4 * inches, within(25.4 * 0.00005));
    }

    /** Computed from ASTM B258's formula by another program (numpy). */
    @ParameterizedTest
    @CsvSource({
        "4, 5.1894",
        "6, 4.1154",
        "8, 3.2636",
        "16, 1.2908",
        "18, 1.0237",
        "20, 0.8118",
        "22, 0.6438"
    })
    void gaugesInMillimetres(int awg, double mm) {
        assertThat(Gauge.mm(awg)).isCloseTo(mm, within(0.00005));
    }

    @Test
    void millimetresAndGaugesGoBackAndForth() {
        for (int awg = Gauge.THICKEST; awg <= Gauge.THINNEST; awg++) {
            assertThat(Gauge.awg(Gauge.mm(awg))).isCloseTo(awg, within(1e-9));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> Gauge.mm(41));
        assertThatIllegalArgumentException().isThrownBy(() -> Gauge.mm(-4));
        assertThatIllegalArgumentException().isThrownBy(() -> Gauge.awg(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Gauge.awg(Double.NaN));
    }

    /**
     * Published for bare copper, pounds in 1000 feet: 640.5 for 0000, 126.3 for 4, 31.43 for 10,
     * 19.77 for 12, 12.43 for 14 (ezcalculator.net; it takes a slightly lighter copper, so 1 %).
     */
    @ParameterizedTest
    @CsvSource({"-3, 640.5", "4, 126.3", "10, 31.43", "12, 19.77", "14, 12.43"})
    void copperWeighsWhatTablesSay(int awg, double poundsIn1000Feet) {
        double gramsPerMetre = poundsIn1000Feet * KG_OF_POUND / M_OF_FOOT;
        assertThat(WireMetal.COPPER.gramsPerMetre(Gauge.mm(awg)))
                .isCloseTo(gramsPerMetre, within(0.01 * gramsPerMetre));
    }

    /**
     * Worked by hand from density · π/4 · d²; densities 2.70 and 8.96 (wiregaugecalculator.com).
     */
    @ParameterizedTest
    @CsvSource({
        "1.0, 2.121, 7.037, 235.8, 71.1",
        "2.5, 13.254, 43.982, 37.7, 11.4",
        "4.0, 33.929, 112.595, 14.7, 4.4",
        "6.0, 76.341, 253.338, 6.5, 2.0"
    })
    void gramsAMetreAndMetresARoll(
            double mm, double aluminium, double copper, double alMetres, double cuMetres) {
        assertThat(WireMetal.ALUMINIUM.gramsPerMetre(mm)).isCloseTo(aluminium, within(0.0005));
        assertThat(WireMetal.COPPER.gramsPerMetre(mm)).isCloseTo(copper, within(0.0005));
        assertThat(WireMetal.ALUMINIUM.metresIn(500, mm)).isCloseTo(alMetres, within(0.05));
        assertThat(WireMetal.COPPER.metresIn(500, mm)).isCloseTo(cuMetres, within(0.05));
    }

    /** A published puzzle: ten turns around 4 in, 9 in long, take 41 in. */
    @Test
    void tenTurnsAroundATube() {
        double around = 4 / Math.PI;
        assertThat(new Winding(9, around - 1e-9, 1e-9).wireMmAtPitch(0.9))
                .isCloseTo(41, within(1e-6));
    }

    /** A published staircase: radius 1 m, 2 m a turn, ten turns, 66 m (with π taken as 3.145). */
    @Test
    void tenTurnsOfAStaircase() {
        assertThat(new Winding(20, 2 - 1e-9, 1e-9).wireMmAtPitch(2)).isCloseTo(66, within(0.1));
    }

    /** Worked by hand: the wire's own middle line, 100 · √(1 + (π · 12/20)²). */
    @Test
    void thickWireRunsAroundItsOwnMiddleLine() {
        assertThat(new Winding(100, 9, 3).wireMmAtPitch(20)).isCloseTo(213.4, within(0.05));
    }

    @Test
    void at45DegreesTheWireIsRootTwoTimesTheBranch() {
        assertThat(new Winding(250, 9, 3).wireMmAt45Degrees())
                .isCloseTo(250 * Math.sqrt(2), within(1e-9));
        assertThat(new Winding(250, 9, 3).wireMmAtPitch(1e12)).isCloseTo(250, within(1e-6));
    }

    /** Worked by hand: 250 mm long, 9 mm thick, 3 mm aluminium, 0.25 · 1.4142 m · 19.085 g/m. */
    @Test
    void aBranchOfNineMillimetresTakesThree() {
        var choice = choice(250, 9, WireMetal.ALUMINIUM, 1.0, 2.0, 2.5, 3.0, 3.5, 4.0);
        assertThat(choice.gaugeMm()).isEqualTo(3.0);
        assertThat(choice.strands()).isEqualTo(1);
        assertThat(choice.metres()).isCloseTo(0.35355, within(0.00001));
        assertThat(choice.grams()).isCloseTo(6.748, within(0.001));
    }

    /** The shares are common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "9,  ALUMINIUM, 3.0, 1",
        "8,  ALUMINIUM, 2.5, 1",
        "8,  COPPER,    2.5, 1",
        "12, COPPER,    3.5, 1",
        "5,  ALUMINIUM, 1.5, 1",
        "3,  ALUMINIUM, 1.0, 1",
        "2,  ALUMINIUM, 1.0, 1",
        "13, ALUMINIUM, 4.0, 1",
        "14, ALUMINIUM, 3.5, 2",
        "16, ALUMINIUM, 4.0, 2"
    })
    void gaugesForBranches(double acrossMm, WireMetal metal, double gaugeMm, int strands) {
        var choice = choice(300, acrossMm, metal, 4.0, 3.5, 3.0, 2.5, 2.0, 1.5, 1.0);
        assertThat(choice.gaugeMm()).isEqualTo(gaugeMm);
        assertThat(choice.strands()).isEqualTo(strands);
    }

    /** Plastic bending of a round bar: the moment goes with d³, so two of 3 mm are one of 3.78. */
    @Test
    void twoWiresHoldLikeOneThatIsAQuarterThicker() {
        assertThat(WireChoice.TWO_LIKE_ONE).isCloseTo(1.26, within(0.0001));
        var found = found(WireChoice.of(300, 12, WireMetal.ALUMINIUM, List.of(3.0)));
        assertThat(found.value().strands()).isEqualTo(2);
        assertThat(found.value().metres()).isCloseTo(2 * 0.3 * Math.sqrt(2), within(1e-9));
        assertThat(found.remarks())
                .contains(
                        "No gauge in stock is thick enough by itself; two of 3 mm side by side hold"
                                + " like one of 3.78 mm.");
    }

    @Test
    void stifferWireThanNeededIsSaid() {
        var found = found(WireChoice.of(300, 4, WireMetal.ALUMINIUM, List.of(2.0)));
        assertThat(found.remarks())
                .contains("2 mm is stiffer than this branch needs; lay it on with care.");
    }

    @Test
    void whereNothingInStockHoldsItIsRefusedWithWhatWouldBeNeeded() {
        assertThat(words(WireChoice.of(300, 9, WireMetal.ALUMINIUM, List.of())))
                .isEqualTo("Expected a wire of 2.7 to 3.6 mm, found none in stock.");
        assertThat(words(WireChoice.of(300, 30, WireMetal.ALUMINIUM, List.of(3.0, 6.0))))
                .isEqualTo(
                        "Expected a wire of 9 to 12 mm, found nothing that holds like it, even"
                                + " doubled; the thickest is 6 mm. Maybe use a guy wire or copper.");
        assertThat(words(WireChoice.of(300, 2, WireMetal.ALUMINIUM, List.of(3.0, 6.0))))
                .isEqualTo(
                        "Expected a wire of 0.6 to 0.8 mm, found nothing thinner than 3 mm. Maybe"
                                + " tie it down with a guy wire.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void lengthsAreAboveNothing(double mm) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Winding(mm, 9, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Winding(250, mm, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Winding(250, 9, mm));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Winding(250, 9, 3).wireMmAtPitch(mm));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WireChoice.of(250, 9, WireMetal.COPPER, List.of(mm)));
    }

    @Test
    void moreInStockNeverTakesAWireAway() {
        long seed = 9_917;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 1000; i++) {
            var stocked = new ArrayList<Double>();
            for (int w = 0; w < dice.nextInt(6); w++) {
                stocked.add(dice.nextInt(2, 17) / 2.0);
            }
            double across = dice.nextDouble(1, 30);
            var metal = List.of(WireMetal.values()).get(dice.nextInt(2));
            var before = WireChoice.of(200, across, metal, stocked);
            stocked.add(dice.nextInt(stocked.size() + 1), dice.nextInt(2, 17) / 2.0);
            var after = WireChoice.of(200, across, metal, stocked);
            var where =
                    "seed %d, case %d: %s mm of %s with %s"
                            .formatted(seed, i, across, metal, stocked);
            if (before.find().isPresent()) {
                assertThat(after.find()).as(where).isPresent();
                assertThat(stocked).as(where).contains(after.find().get().gaugeMm());
                assertThat(after.find().get().strands())
                        .as(where)
                        .isLessThanOrEqualTo(before.find().get().strands());
            }
        }
    }

    private static WireChoice choice(
            double branchMm, double acrossMm, WireMetal metal, Double... stocked) {
        return found(WireChoice.of(branchMm, acrossMm, metal, List.of(stocked))).value();
    }

    private static Reckoned.Found<WireChoice> found(Reckoned<WireChoice> reckoned) {
        assertThat(reckoned).isInstanceOf(Reckoned.Found.class);
        return (Reckoned.Found<WireChoice>) reckoned;
    }

    private static String words(Reckoned<WireChoice> reckoned) {
        assertThat(reckoned).isInstanceOf(Reckoned.Refused.class);
        return reckoned.refusals().get(0).words();
    }
}
