package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("fast")
class ContainerTest {

    private static final int CASES = 500;

    /**
     * Worked by hand from the frustum and prismatoid formulas, in cm and litres: a round frustum of
     * radii 15 and 12 and height 10; oval and rectangular ones of 40 by 30 over 36 by 26, height 8.
     */
    @ParameterizedTest
    @CsvSource({
        "ROUND,       300, 300, 240, 240, 100, 5.749",
        "OVAL,        400, 300, 360, 260,  80, 6.694",
        "RECTANGULAR, 400, 300, 400, 300,  80, 9.600",
        "RECTANGULAR, 400, 300, 360, 260,  80, 8.523"
    })
    void volumesWorkedByHand(
            Outline outline,
            double l,
            double w,
            double bl,
            double bw,
            double depth,
            double litres) {
        assertThat(container(outline, l, w, bl, bw, depth).brimLitres())
                .isCloseTo(litres, within(0.0005));
    }

    /**
     * Published worked examples of truncated cones: calculatorlib.com, diameters 10 and 6, height
     * 8, 410.50 cubic units, and radii 5 and 3, height 10, 513.13; summacalculator.com, radii 0.3
     * and 0.2 m, height 0.6 m, 0.1194 m³.
     */
    @ParameterizedTest
    @CsvSource({
        "100, 60, 80, 0.41050, 0.000005",
        "60, 100, 100, 0.51313, 0.000005",
        "600, 400, 600, 119.4, 0.05"
    })
    void conesOfPublishedExamples(
            double topMm, double bottomMm, double depthMm, double litres, double off) {
        assertThat(new ContainerShape.Round(topMm, bottomMm, depthMm).litres(depthMm))
                .isCloseTo(litres, within(off));
    }

    /** A nearly full cone holds a third of the cylinder (Euclid, Elements XII.10). */
    @Test
    void aConeHoldsAThirdOfTheCylinder() {
        double cone = new ContainerShape.Round(300, 1e-9, 200).litres(200);
        double cylinder = new ContainerShape.Round(300, 300, 200).litres(200);
        assertThat(cone).isCloseTo(cylinder / 3, within(1e-9));
    }

    @Test
    void lipAndDressingTakeFromTheTop() {
        var sizes = new ContainerSizes(Outline.RECTANGULAR, 400, 300, 400, 300, 80, 15, 5);
        var container = sizes.reckon().find().orElseThrow();
        assertThat(container.rootDepthMm()).isEqualTo(60);
        assertThat(container.substrateLitres()).as("40 × 30 × 6").isCloseTo(7.2, within(1e-9));
        assertThat(container.dressingLitres()).as("40 × 30 × 0.5").isCloseTo(0.6, within(1e-9));
        assertThat(container.brimLitres()).as("40 × 30 × 8").isCloseTo(9.6, within(1e-9));
        assertThat(container.topAreaCm2()).isEqualTo(1200);
        assertThat(container.litresAround(new RootBall(Footprint.round(200), 50)))
                .as("7.2 − π · 10² · 5 / 1000")
                .isCloseTo(5.6292, within(0.0001));
        assertThat(
                        container.litresAround(
                                new RootBall(new Footprint(Outline.RECTANGULAR, 500, 400), 60)))
                .isZero();
    }

    @Test
    void impossibleSizesAreRefusedWithEveryReason() {
        var sizes = new ContainerSizes(Outline.OVAL, 5, Double.NaN, 300, 0, 80, -1, 4000);
        assertThat(sizes.reckon().find()).isEmpty();
        assertThat(sizes.reckon().refusals())
                .extracting(Refusal::field)
                .containsExactly(
                        "topLengthMm", "topWidthMm", "bottomWidthMm", "lipMm", "dressingMm");
    }

    @Test
    void aLipDeeperThanTheContainerIsRefused() {
        assertThat(words(ContainerSizes.straight(Outline.ROUND, 200, 200, 80, 80)))
                .isEqualTo(
                        "expected less than the depth of 80 mm, found 80. Maybe lip and depth were"
                                + " swapped.");
        assertThat(words(new ContainerSizes(Outline.ROUND, 200, 0, 200, 0, 80, 30, 50)))
                .isEqualTo("expected less than the 50 mm under the lip, found 50");
    }

    @Test
    void whatGoesWithoutSayingMayBeLeftOut() {
        assertThat(ContainerSizes.of(Outline.OVAL, 300, 200.0, null, null, 80, 10, 0).find())
                .contains(ContainerSizes.straight(Outline.OVAL, 300, 200, 80, 10));
        assertThat(ContainerSizes.of(Outline.ROUND, 300, null, 250.0, null, 80, 10, 5).find())
                .contains(new ContainerSizes(Outline.ROUND, 300, 300, 250, 250, 80, 10, 5));
        assertThat(ContainerSizes.of(Outline.ROUND, 300, 200.0, null, null, 80, 10, 0).refusals())
                .containsExactly(
                        new Refusal(
                                "topWidthMm",
                                "expected nothing, since what is round has one diameter, found"
                                        + " 200"));
        assertThat(ContainerSizes.of(Outline.OVAL, 300, null, null, 90.0, 80, 10, 0).refusals())
                .extracting(Refusal::field)
                .containsExactly("topWidthMm", "bottomLengthMm");
        assertThat(ContainerSizes.of(Outline.OVAL, 300, 200.0, 90.0, null, 80, 10, 0).refusals())
                .extracting(Refusal::field)
                .containsExactly("bottomWidthMm");
    }

    @Test
    void aSizeReadInCentimetresIsGuessed() {
        assertThat(words(ContainerSizes.straight(Outline.ROUND, 200, 200, 8, 0)))
                .isEqualTo("expected 10 to 3000 mm, found 8. Maybe it was read in centimetres.");
    }

    @Test
    void aBottomWiderThanTheTopIsOnlyAskedAbout() {
        var bag = new ContainerSizes(Outline.ROUND, 180, 0, 200, 0, 100, 10, 0).reckon();
        assertThat(bag.find()).isPresent();
        assertThat(bag.remarks())
                .containsExactly(
                        "The bottom is wider than the top: a diameter of 200 mm below, 180 mm at"
                                + " the rim. Maybe swap them.");
        var turned = new ContainerSizes(Outline.OVAL, 200, 300, 200, 300, 100, 10, 0).reckon();
        assertThat(turned.find()).isPresent();
        assertThat(turned.remarks())
                .containsExactly(
                        "At the rim the width of 300 mm is more than the length of 200 mm. Maybe"
                                + " swap them.");
        var plain = ContainerSizes.straight(Outline.OVAL, 300, 200, 100, 10).reckon();
        assertThat(plain.remarks()).isEmpty();
    }

    @Test
    void nothingIsFilledBelowTheBottomOrAboveTheRim() {
        var shape = new ContainerShape.Round(300, 240, 100);
        assertThat(shape.litres(0)).isZero();
        for (double fill : new double[] {-0.1, 100.1, Double.NaN}) {
            assertThatIllegalArgumentException().isThrownBy(() -> shape.litres(fill));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ContainerShape.Round(300, 240, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Container(shape, 60, 40));
    }

    /** Slices on top of each other are the whole, and a higher fill is more. */
    @Test
    void fillingAddsUp() {
        long seed = 60_211;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            var shape = any(dice);
            double depth = shape.depthMm();
            double fill = dice.nextDouble(0.05, 1) * depth;
            double slices = 0;
            int count = dice.nextInt(200, 400);
            for (int slice = 0; slice < count; slice++) {
                double middle = (slice + 0.5) * fill / count;
                slices += shape.at(middle).areaMm2() * fill / count / 1e6;
            }
            assertThat(shape.litres(fill))
                    .as("seed %d, case %d: %s filled to %s", seed, i, shape, fill)
                    .isCloseTo(slices, within(1e-3 * slices))
                    .isGreaterThan(shape.litres(fill * 0.99));
        }
    }

    /** Cut through at any height, the lower and the upper piece hold the whole together. */
    @Test
    void twoPiecesHoldTheWhole() {
        long seed = 60_212;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            var shape = any(dice);
            double cut = dice.nextDouble(0.05, 0.95) * shape.depthMm();
            double height = shape.depthMm() - cut;
            double above = piece(shape.top(), shape.at(cut), height).litres(height);
            assertThat(shape.litres(cut) + above)
                    .as("seed %d, case %d: %s cut at %s", seed, i, shape, cut)
                    .isCloseTo(shape.litres(shape.depthMm()), within(1e-9));
        }
    }

    @Test
    void anOvalWithEqualAxesIsRoundAndARectangleHoldsMore() {
        long seed = 60_213;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            double top = dice.nextDouble(50, 600);
            double bottom = dice.nextDouble(50, 600);
            double depth = dice.nextDouble(20, 400);
            double round = new ContainerShape.Round(top, bottom, depth).litres(depth);
            double oval = new ContainerShape.Oval(top, top, bottom, bottom, depth).litres(depth);
            double square =
                    new ContainerShape.Rectangular(top, top, bottom, bottom, depth).litres(depth);
            var where = "seed %d, case %d".formatted(seed, i);
            assertThat(oval).as(where).isCloseTo(round, within(1e-9));
            assertThat(square)
                    .as(where + ": the inscribed circle has π/4 of the square")
                    .isCloseTo(round * 4 / Math.PI, within(1e-9));
            double inner = Math.sqrt(0.5);
            assertThat(
                            new ContainerShape.Rectangular(
                                            top * inner,
                                            top * inner,
                                            bottom * inner,
                                            bottom * inner,
                                            depth)
                                    .litres(depth))
                    .as(where + ": the square inside the circle")
                    .isLessThan(round);
        }
    }

    private static ContainerShape piece(Footprint top, Footprint bottom, double depthMm) {
        double l = bottom.lengthMm();
        double w = bottom.widthMm();
        return switch (top.outline()) {
            case ROUND -> new ContainerShape.Round(top.lengthMm(), l, depthMm);
            case OVAL -> new ContainerShape.Oval(top.lengthMm(), top.widthMm(), l, w, depthMm);
            case RECTANGULAR ->
                    new ContainerShape.Rectangular(top.lengthMm(), top.widthMm(), l, w, depthMm);
        };
    }

    private static ContainerShape any(SplittableRandom dice) {
        double a = dice.nextDouble(40, 700);
        double b = dice.nextDouble(40, 700);
        double c = dice.nextDouble(40, 700);
        double d = dice.nextDouble(40, 700);
        double depth = dice.nextDouble(20, 500);
        return switch (dice.nextInt(3)) {
            case 0 -> new ContainerShape.Round(a, b, depth);
            case 1 -> new ContainerShape.Oval(a, b, c, d, depth);
            default -> new ContainerShape.Rectangular(a, b, c, d, depth);
        };
    }

    private static Container container(
            Outline outline, double l, double w, double bl, double bw, double depth) {
        return new ContainerSizes(outline, l, w, bl, bw, depth, 0, 0).reckon().find().orElseThrow();
    }

    private static String words(ContainerSizes sizes) {
        return sizes.reckon().refusals().get(0).words();
    }
}
