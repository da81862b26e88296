package org.ripewood.core.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.supply.NextContainer.Fitting;

/** Depths and lengths wanted are common practice, no source; the fitting is plane geometry. */
@Tag("fast")
class NextContainerTest {

    private static final Footprint ROUND_200 = Footprint.round(200);

    @Test
    void theContainerNearestToWhatIsUsualComesFirst() {
        var ball = new RootBall(ROUND_200, 50);
        var wanted = WantedContainer.usual(60.0, 450.0, 300.0, null);
        assertThat(wanted.lengthMm()).isCloseTo(300, within(1e-9));
        var next =
                NextContainer.of(
                        ball,
                        wanted,
                        List.of(
                                oval(1, "deep", 300, 240, 120),
                                oval(2, "right", 310, 240, 65),
                                oval(3, "long", 600, 400, 65),
                                oval(4, "flat", 310, 240, 61)));
        assertThat(names(next)).containsExactly("flat", "right", "deep", "long");
        assertThat(
                        names(
                                NextContainer.of(
                                        ball,
                                        new WantedContainer(200.0, null, null),
                                        List.of(
                                                oval(1, "half", 300, 240, 100),
                                                oval(2, "near", 300, 240, 180)))))
                .as("too shallow counts as well")
                .containsExactly("near", "half");
        assertThat(next.fitting().get(1).reasons())
                .containsExactly(
                        "Depth 65 mm, 5 mm more than wanted.",
                        "Length 310 mm, 10 mm more than wanted.",
                        "20 mm of room at the sides.");
        assertThat(next.fitting().get(2).reasons()).contains("Length 300 mm, as wanted.");
        assertThat(next.fitting().get(2).misfit())
                .as("twice as deep as wanted")
                .isCloseTo(Math.log(2), within(1e-12));
        assertThat(next.tooSmall()).isEmpty();
    }

    @Test
    void withNothingWantedTheSmallestWithRoomComesFirst() {
        var next =
                NextContainer.of(
                        new RootBall(ROUND_200, 50),
                        WantedContainer.any(),
                        List.of(
                                oval(1, "wide", 320, 300, 80),
                                oval(2, "tight", 210, 205, 80),
                                oval(3, "small", 250, 230, 80)));
        assertThat(names(next)).containsExactly("small", "wide", "tight");
        assertThat(next.fitting().get(2).reasons())
                .contains("2 mm of room at the sides, which roots soon fill.");
    }

    @Test
    void aContainerSmallerThanTheRootBallIsRefusedWithWhatWouldComeOff() {
        var ball = new RootBall(new Footprint(Outline.RECTANGULAR, 300, 200), 80);
        var small = offered(1, "small", Outline.RECTANGULAR, 250, 220, 250, 220, 70, 10, 3);
        var unfit = NextContainer.of(ball, WantedContainer.any(), List.of(small)).tooSmall();
        assertThat(unfit).hasSize(1);
        assertThat(unfit.get(0).reasons())
                .containsExactly(
                        "There are 60 mm for roots, and the root ball is 80 mm deep: 20 mm would"
                                + " have to come off below.",
                        "Where the root ball would stand there is room for 250 × 200 mm of its 300"
                                + " × 200 mm: 50 mm of the length would have to come off.");
        assertThat(unfit.get(0).offShare())
                .as("1 − 250 · 200 · 60 / (300 · 200 · 80), worked by hand")
                .isCloseTo(0.375, within(1e-12));
    }

    /** 160² + 120² = 200², the 3-4-5 triangle: just inside a circle of 200 mm. */
    @ParameterizedTest
    @CsvSource({
        "ROUND, 200, 200, RECTANGULAR, 160, 120, true",
        "ROUND, 200, 200, RECTANGULAR, 161, 120, false",
        "OVAL, 400, 200, RECTANGULAR, 320, 120, true",
        "OVAL, 400, 200, RECTANGULAR, 320, 125, false",
        "OVAL, 400, 200, ROUND, 200, 200, true",
        "OVAL, 400, 200, ROUND, 201, 201, false",
        "OVAL, 400, 200, OVAL, 200, 400, true",
        "RECTANGULAR, 400, 200, OVAL, 400, 200, true",
        "RECTANGULAR, 400, 200, OVAL, 400, 201, false",
        "RECTANGULAR, 200, 400, RECTANGULAR, 390, 190, true",
        "ROUND, 200, 200, ROUND, 200, 200, true"
    })
    void outlinesFitIntoOutlines(
            Outline outline,
            double length,
            double width,
            Outline ball,
            double ballLength,
            double ballWidth,
            boolean fits) {
        var next =
                NextContainer.of(
                        new RootBall(new Footprint(ball, ballLength, ballWidth), 40),
                        WantedContainer.any(),
                        List.of(
                                offered(
                                        1, "one", outline, length, width, length, width, 80, 10,
                                        1)));
        assertThat(next.fitting()).hasSize(fits ? 1 : 0);
        assertThat(next.tooSmall()).hasSize(fits ? 0 : 1);
    }

    /**
     * A tapered container is narrow where a deep ball ends: at 100 mm deep, 300 mm above and 200 mm
     * below, a ball of 80 mm depth ends 10 mm above the bottom under a lip of 10 mm, where it is
     * 210 mm wide; worked by hand.
     */
    @Test
    void aDeepRootBallMeetsTheLeaningWalls() {
        var tapered = offered(1, "tapered", Outline.ROUND, 300, 300, 200, 200, 100, 10, 1);
        assertThat(fits(new RootBall(Footprint.round(210), 80), tapered)).isTrue();
        assertThat(fits(new RootBall(Footprint.round(211), 80), tapered)).isFalse();
        assertThat(fits(new RootBall(Footprint.round(250), 40), tapered)).isTrue();
        var bag = offered(2, "bag", Outline.ROUND, 200, 200, 300, 300, 100, 10, 1);
        assertThat(fits(new RootBall(Footprint.round(210), 40), bag))
                .as("it has to go in through the rim")
                .isFalse();
    }

    @Test
    void aBigStepDownIsSaid() {
        var wanted = new WantedContainer(null, null, 150.0);
        var ball = new RootBall(ROUND_200, 40);
        assertThat(
                        NextContainer.of(ball, wanted, List.of(oval(1, "flat", 300, 280, 90)))
                                .fitting()
                                .get(0)
                                .reasons())
                .contains(
                        "More than a third shallower than the 150 mm it stands in now. Maybe take a"
                                + " step between.");
        assertThat(
                        NextContainer.of(ball, wanted, List.of(oval(1, "squat", 300, 280, 100)))
                                .fitting()
                                .get(0)
                                .reasons())
                .noneMatch(reason -> reason.contains("third"));
    }

    @Test
    void whatIsUsedUpIsNotOffered() {
        var none = offered(1, "gone", Outline.ROUND, 300, 300, 300, 300, 80, 10, 0);
        var next =
                NextContainer.of(new RootBall(ROUND_200, 40), WantedContainer.any(), List.of(none));
        assertThat(next.fitting()).isEmpty();
        assertThat(next.tooSmall().get(0).reasons())
                .containsExactly("None of it is left in stock.");
        assertThat(next.tooSmall().get(0).offShare()).isZero();
    }

    @Test
    void theOrderIsTotalAndDoesNotHangOnTheOrderOffered() {
        long seed = 88_003;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            var offered = new ArrayList<OfferedContainer>();
            for (int c = 0; c < dice.nextInt(1, 15); c++) {
                // few sizes and names, so that many tie
                offered.add(
                        offered(
                                c,
                                "n" + dice.nextInt(2),
                                List.of(Outline.values()).get(dice.nextInt(3)),
                                100 * dice.nextInt(1, 4),
                                100 * dice.nextInt(1, 4),
                                100 * dice.nextInt(1, 4),
                                100 * dice.nextInt(1, 4),
                                60 * dice.nextInt(1, 3),
                                10,
                                dice.nextInt(3)));
            }
            var ball =
                    new RootBall(
                            Footprint.round(dice.nextDouble(80, 280)), dice.nextDouble(20, 90));
            var wanted = new WantedContainer(60.0, 200.0, null);
            var expected = NextContainer.of(ball, wanted, offered);
            assertThat(expected.fitting().size() + expected.tooSmall().size())
                    .isEqualTo(offered.size());
            Collections.shuffle(offered, new Random(dice.nextLong()));
            var where = "seed %d, case %d".formatted(seed, i);
            assertThat(NextContainer.of(ball, wanted, offered)).as(where).isEqualTo(expected);
            for (Fitting one : expected.fitting()) {
                assertThat(one.roomMm()).as(where).isGreaterThanOrEqualTo(-1e-9);
            }
            for (var one : expected.tooSmall()) {
                assertThat(fits(one.left(), again(one.offered())))
                        .as("%s: %s cut to %s fits %s", where, ball, one.left(), one.offered())
                        .isTrue();
            }
        }
    }

    @Test
    void twoContainersWithOneIdAreABug() {
        var twice = List.of(oval(1, "a", 300, 200, 80), oval(1, "b", 300, 200, 80));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                NextContainer.of(
                                        new RootBall(ROUND_200, 40), WantedContainer.any(), twice));
    }

    private static OfferedContainer again(OfferedContainer one) {
        return new OfferedContainer(one.id(), one.name(), one.container(), 1);
    }

    private static boolean fits(RootBall ball, OfferedContainer offered) {
        return !NextContainer.of(ball, WantedContainer.any(), List.of(offered)).fitting().isEmpty();
    }

    private static List<String> names(NextContainer next) {
        return next.fitting().stream().map(one -> one.offered().name()).toList();
    }

    private static OfferedContainer oval(long id, String name, double l, double w, double depth) {
        return offered(id, name, Outline.OVAL, l, w, l, w, depth, 10, 1);
    }

    private static OfferedContainer offered(
            long id,
            String name,
            Outline outline,
            double l,
            double w,
            double bl,
            double bw,
            double depth,
            double lip,
            int count) {
        var container =
                new ContainerSizes(outline, l, w, bl, bw, depth, lip, 0)
                        .reckon()
                        .find()
                        .orElseThrow();
        return new OfferedContainer(id, name, container, count);
    }
}
