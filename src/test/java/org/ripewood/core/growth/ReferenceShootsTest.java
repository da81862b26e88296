package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Schools are drawn from the model the estimate assumes, and then spoiled. Lengths are a maple's of
 * the content (from memory).
 */
@Tag("fast")
class ReferenceShootsTest {

    private static final ShootLengths MAPLE = new ShootLengths(70, 180, 400, 800);
    private static final int SCHOOLS = 600;

    /** Trees in pots of as many keepers, each measured every season. */
    private static List<ShootSample> school(Random dice, double level, int trees, int seasons) {
        var years =
                IntStream.range(0, seasons)
                        .mapToDouble(year -> dice.nextGaussian() * SchoolLevel.SEASON_SD)
                        .toArray();
        var samples = new ArrayList<ShootSample>();
        for (int tree = 0; tree < trees; tree++) {
            double own = level + dice.nextGaussian() * SchoolLevel.TREE_SD;
            for (int year = 0; year < seasons; year++) {
                samples.add(pot(tree, year, 180 * Math.exp(own + years[year])));
            }
        }
        return samples;
    }

    private static ShootSample pot(int tree, int year, double mm) {
        return new ShootSample(tree, tree, 2015 + year, mm, false);
    }

    private static List<ShootSample> alike(int trees, int seasons, double mm) {
        var samples = new ArrayList<ShootSample>();
        for (int tree = 0; tree < trees; tree++) {
            for (int year = 0; year < seasons; year++) {
                samples.add(pot(tree, year, mm));
            }
        }
        return samples;
    }

    private static SchoolLevel pots(List<ShootSample> samples) {
        return ReferenceShoots.of(MAPLE, samples).inPot();
    }

    @Test
    void withoutTreesTheContentStands() {
        var shoots = ReferenceShoots.of(MAPLE, List.of());
        assertThat(shoots).isEqualTo(ReferenceShoots.of(MAPLE));
        assertThat(shoots.lengths(false)).isEqualTo(MAPLE);
        assertThat(shoots.lengths(true)).isEqualTo(MAPLE);
    }

    @Test
    void fourTreesOrElevenOfOneKeeperChangeNothing() {
        assertThat(pots(alike(4, 8, 300))).isEqualTo(new SchoolLevel(1, 4, 4, 8));
        assertThat(pots(alike(5, 8, 300)).factor()).isGreaterThan(1.05);
        assertThat(pots(ofOneKeeper(11))).isEqualTo(new SchoolLevel(1, 11, 1, 1));
        assertThat(pots(ofOneKeeper(12)).factor()).isGreaterThan(1.05);
    }

    private static List<ShootSample> ofOneKeeper(int trees) {
        return IntStream.range(0, trees)
                .mapToObj(tree -> new ShootSample(tree, 1, 2020, 300, false))
                .toList();
    }

    /** By hand: ln(240/180) × 0.04 / (0.04 + π/2 × 0.2025 / 8 + 0.0225 / 4). */
    @Test
    void eightTreesOfFourSeasonsMoveItNearlyHalfWay() {
        var told = pots(alike(8, 4, 240));
        assertThat(told.factor()).isCloseTo(Math.exp(0.287682 * 0.04 / 0.0853861), within(1e-6));
        assertThat(told).isEqualTo(new SchoolLevel(told.factor(), 8, 8, 4));
        var lengths = ReferenceShoots.of(MAPLE, alike(8, 4, 240)).lengths(false);
        assertThat(lengths.fair()).isCloseTo(180 * told.factor(), within(1e-9));
        assertThat(lengths.weak()).isCloseTo(70 * told.factor(), within(1e-9));
    }

    /** By hand: the middle of fair and strong in a pot, 290, is what is healthy in the ground. */
    @Test
    void treesInTheGroundAreToldApart() {
        var samples =
                alike(30, 10, 290).stream()
                        .map(one -> new ShootSample(one.tree(), 1, one.season(), 290, true))
                        .toList();
        var shoots = ReferenceShoots.of(MAPLE, samples);
        assertThat(shoots.inGround().factor()).isCloseTo(1, within(1e-12));
        assertThat(shoots.inGround().trees()).isEqualTo(30);
        assertThat(shoots.inPot()).isEqualTo(SchoolLevel.NONE);
    }

    @Test
    void itFindsTheSchoolsLevelAsTreesAndSeasonsGrow() {
        double before = Double.POSITIVE_INFINITY;
        for (int trees : new int[] {5, 20, 80, 320}) {
            double error = rootMeanSquare(new Random(7), 0.2, trees, trees / 2);
            assertThat(error).as("%d trees", trees).isLessThan(before);
            before = error;
        }
        // √(π/2 × 0.2025 / 320 + 0.0225 / 160) is 0.034; of 60 schools a tenth more or less
        assertThat(before).isBetween(0.025, 0.043);
    }

    private static double rootMeanSquare(Random dice, double level, int trees, int seasons) {
        int schools = 60;
        double squares = 0;
        for (int i = 0; i < schools; i++) {
            double off = Math.log(pots(school(dice, level, trees, seasons)).factor()) - level;
            squares += off * off;
        }
        return Math.sqrt(squares / schools);
    }

    /** Over schools drawn as the prior says, it must beat both of what it is made of. */
    @Test
    void itIsNearerThanTheContentAloneAndThanTheTreesAlone() {
        var dice = new Random(11);
        for (int trees : new int[] {6, 12, 24}) {
            double shrunk = 0;
            double content = 0;
            double alone = 0;
            for (int i = 0; i < SCHOOLS; i++) {
                double level = dice.nextGaussian() * SchoolLevel.CONTENT_SD;
                var samples = school(dice, level, trees, 3);
                shrunk += square(Math.log(pots(samples).factor()) - level);
                alone += square(mean(samples) - level);
                content += square(level);
            }
            assertThat(shrunk).as("%d trees", trees).isLessThan(0.9 * content);
            assertThat(shrunk).as("%d trees", trees).isLessThan(alone);
        }
    }

    private static double square(double number) {
        return number * number;
    }

    private static double mean(List<ShootSample> samples) {
        return samples.stream()
                .mapToDouble(one -> Math.log(one.mm() / 180))
                .average()
                .orElseThrow();
    }

    /** Every fifth tree measured in the wrong unit: the mean is off by 0.46, this by far less. */
    @Test
    void slipsOfTheUnitHardlyMoveIt() {
        var dice = new Random(13);
        double off = 0;
        double meanOff = 0;
        for (int i = 0; i < 100; i++) {
            var clean = school(dice, 0, 40, 5);
            var spoiled = changed(clean, one -> one.tree() % 5 == 0, mm -> mm / 10);
            off += Math.abs(Math.log(pots(spoiled).factor() / pots(clean).factor())) / 100;
            meanOff += Math.abs(mean(spoiled) - mean(clean)) / 100;
        }
        assertThat(meanOff).isCloseTo(0.46, within(0.01));
        assertThat(off).isLessThan(0.15);
    }

    private static List<ShootSample> changed(
            List<ShootSample> samples, Predicate<ShootSample> which, DoubleUnaryOperator to) {
        return samples.stream()
                .map(
                        one ->
                                which.test(one)
                                        ? new ShootSample(
                                                one.tree(),
                                                one.keeper(),
                                                one.season(),
                                                to.applyAsDouble(one.mm()),
                                                one.inGround())
                                        : one)
                .toList();
    }

    @Test
    void aLongerShootNeverLowersIt() {
        var dice = new Random(17);
        for (int i = 0; i < SCHOOLS; i++) {
            var samples = school(dice, 0.3 * dice.nextGaussian(), 5 + dice.nextInt(12), 3);
            int longer = dice.nextInt(samples.size());
            var grown = new ArrayList<>(samples);
            var one = samples.get(longer);
            grown.set(
                    longer,
                    new ShootSample(
                            one.tree(),
                            one.keeper(),
                            one.season(),
                            one.mm() * (1 + 4 * dice.nextDouble()),
                            false));
            assertThat(pots(grown).factor()).isGreaterThanOrEqualTo(pots(samples).factor());
        }
    }

    @Test
    void oneTreeCountsOnceHoweverOftenItWasMeasured() {
        var samples = new ArrayList<>(alike(8, 1, 180));
        for (int year = 0; year < 30; year++) {
            samples.add(pot(99, year, 900));
        }
        assertThat(pots(samples).trees()).isEqualTo(9);
        assertThat(pots(samples).factor()).isCloseTo(1, within(1e-12));
    }

    @Test
    void aSingleSeasonTellsLessThanMany() {
        double one = pots(alike(60, 1, 230)).factor();
        double many = pots(alike(60, 10, 230)).factor();
        assertThat(one).isGreaterThan(1);
        assertThat(many).isGreaterThan(one + 0.03);
        // One tree's nine other seasons are no nine seasons of all trees.
        var nearlyOne = new ArrayList<>(alike(60, 1, 230));
        IntStream.range(1, 10).forEach(year -> nearlyOne.add(pot(0, year, 230)));
        assertThat(pots(nearlyOne).factor()).isCloseTo(one, within(0.003));
    }

    @Test
    void theOrderOfTheSamplesDoesNotMatter() {
        var samples = school(new Random(19), 0.1, 25, 6);
        var told = pots(samples);
        var dice = new Random(23);
        for (int i = 0; i < 20; i++) {
            var shuffled = new ArrayList<>(samples);
            Collections.shuffle(shuffled, dice);
            assertThat(pots(shuffled)).isEqualTo(told);
        }
    }

    /** Content lengths at random, the school as far off as can be: nothing changes places. */
    @Test
    void weakFairAndStrongKeepTheirOrderInPotAndGround() {
        var dice = new Random(29);
        for (int i = 0; i < SCHOOLS; i++) {
            double weak = 10 + 90 * dice.nextDouble();
            double fair = weak * (1.05 + dice.nextDouble());
            double strong = fair * (1.05 + dice.nextDouble());
            var content = new ShootLengths(weak, fair, strong, strong * (1.05 + dice.nextDouble()));
            double pot = dice.nextBoolean() ? 0 : 100000;
            var samples = new ArrayList<>(alike(50, 10, pot));
            for (int tree = 100; tree < 150; tree++) {
                samples.add(new ShootSample(tree, tree, 2020 + tree % 10, 100000 - pot, true));
            }
            var shoots = ReferenceShoots.of(content, samples);
            assertThat(shoots.inPot().factor()).isBetween(Math.exp(-0.4), Math.exp(0.4));
            var inPot = shoots.lengths(false);
            var inGround = shoots.lengths(true);
            assertThat(inPot.weak()).isLessThan(inPot.fair());
            assertThat(inPot.fair()).isLessThan(inPot.potStrong());
            assertThat(inPot.potStrong()).isLessThan(inGround.groundStrong());
            assertThat(inPot.weak()).isLessThan(inGround.fair());
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> pot(1, 0, -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 mm or longer");
        assertThatThrownBy(() -> new SchoolLevel(0, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
