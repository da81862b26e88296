package org.ripewood.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.ripewood.condition.RecordOf.treeOn;

import java.time.LocalDate;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.ReferenceShoots;
import org.ripewood.core.growth.ShootLengths;
import org.ripewood.core.growth.ShootSample;
import org.ripewood.core.growth.VigourIndex;
import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.Habit;
import org.ripewood.core.season.StageDays;
import org.ripewood.core.season.TypicalYear;

/** Lengths, grades and days are common practice, no source; their arithmetic is done by hand. */
@Tag("fast")
class VigourFactsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 10, 20);

    /** A pine that rests in winter. */
    private static TreeKind pine(double latitude) {
        return new TreeKind(
                ReferenceShoots.of(new ShootLengths(35, 80, 160, 350)),
                new StageDays(TypicalYear.of(Habit.EVERGREEN_CONIFER, latitude)),
                8,
                Map.of());
    }

    private static RecordOf green(LocalDate on) {
        return treeOn(on)
                .seen(Fact.LEAF_COLOUR_GRADE, 4, on)
                .seen(Fact.FOLIAGE_LOSS_PERCENT, 3, on)
                .seen(Fact.DIEBACK_PERCENT, 0, on);
    }

    private static double index(RecordOf tree) {
        return tree.facts(pine(50)).number(Fact.VIGOUR_INDEX);
    }

    @Test
    void aPineThatHasAlwaysMadeNineMillimetresIsWeak() {
        var tree = green(DAY).seen(Fact.SHOOT_EXTENSION_RATIO, 1, DAY);
        for (int year = 0; year < 5; year++) {
            tree.seen(Fact.SHOOT_EXTENSION_MM, 9, DAY.minusYears(year));
        }
        // 10 + 22.5 * 9 / 35
        assertThat(index(tree)).isCloseTo(15.786, within(1e-3));
    }

    @Test
    void theRatioFollowsFromTheSeriesWhateverWasReckonedByHand() {
        var tree =
                green(DAY)
                        .seen(Fact.SHOOT_EXTENSION_MM, 60, DAY)
                        .seen(Fact.SHOOT_EXTENSION_MM, 90, DAY.minusYears(1))
                        .seen(Fact.SHOOT_EXTENSION_MM, 110, DAY.minusYears(2))
                        .seen(Fact.SHOOT_EXTENSION_RATIO, 1.05, DAY);
        assertThat(tree.facts(pine(50)).number(Fact.SHOOT_EXTENSION_RATIO)).isEqualTo(0.6);
        // of 0.6 two thirds of the way from grade 1 at 0.4 to 2 at 0.7
        assertThat(index(tree)).isCloseTo(10 + 22.5 * (1 + 2.0 / 3), within(1e-9));
    }

    /** Twelve trees of a single season grew 104 mm, where the content says 80 of a healthy one. */
    @Test
    void theSchoolsOwnTreesSharpenWhatShootsAreHeldAgainst() {
        var content = new ShootLengths(35, 80, 160, 350);
        var samples =
                IntStream.range(0, 12)
                        .mapToObj(tree -> new ShootSample(tree, tree % 3, 2025, 104, false))
                        .toList();
        var shoots = ReferenceShoots.of(content, samples);
        var kind = new TreeKind(shoots, GrowingDays.EVERY_DAY, 8, Map.of());
        var tree = green(DAY).seen(Fact.SHOOT_EXTENSION_MM, 80, DAY);
        var told = tree.facts(kind).find(Fact.VIGOUR_INDEX);
        assertThat(told.by())
                .isEqualTo(
                        "shoots, foliage, colour and dead twigs; shoots compared with 12 trees of"
                                + " this species at the school and the content's value");
        // weight 0.04 / (0.04 + pi/2 * 0.2025 / 12 + 0.0225), grade by the line from weak to fair
        double factor = Math.exp(Math.log(1.3) * 0.04 / 0.08900719);
        double grade = 1 + 1.5 * (80 - 35 * factor) / ((80 - 35) * factor);
        assertThat(tree.facts(kind).number(Fact.VIGOUR_INDEX))
                .isCloseTo(10 + 22.5 * grade, within(1e-4));
        var ground = green(DAY).container("ground", RecordOf.CAME);
        ground.seen(Fact.SHOOT_EXTENSION_MM, 80, DAY);
        assertThat(ground.facts(kind).find(Fact.VIGOUR_INDEX).by())
                .isEqualTo("shoots, foliage, colour and dead twigs");
    }

    @Test
    void aSpringReadingIsOfLastYearsShoots() {
        var march = LocalDate.of(2026, 3, 20);
        var tree =
                green(march)
                        .seen(Fact.SHOOT_EXTENSION_MM, 70, march)
                        .seen(Fact.SHOOT_EXTENSION_MM, 80, LocalDate.of(2025, 10, 5))
                        .seen(Fact.SHOOT_EXTENSION_MM, 140, LocalDate.of(2024, 10, 5));
        assertThat(tree.facts(pine(50)).number(Fact.SHOOT_EXTENSION_RATIO)).isEqualTo(0.5);
    }

    @Test
    void whatGrewInTheGroundIsNoMeasureOfWhatGrowsInAPot() {
        var tree =
                green(DAY)
                        .container("ground", LocalDate.of(2020, 1, 1))
                        .container("training", LocalDate.of(2026, 2, 1))
                        .seen(Fact.SHOOT_EXTENSION_MM, 340, LocalDate.of(2025, 10, 1))
                        .seen(Fact.SHOOT_EXTENSION_MM, 120, DAY);
        assertThat(tree.facts(pine(50)).find(Fact.SHOOT_EXTENSION_RATIO)).isNull();
        assertThat(index(tree)).isCloseTo(10 + 22.5 * 3.25, within(1e-9));
    }

    @Test
    void aNewTreeGetsAnIndexFromThreeGradesButNoneForHeavyWork() {
        assertThat(index(green(DAY))).isEqualTo(VigourIndex.MOST_WITH_GAPS);
        assertThat(index(treeOn(DAY).seen(Fact.LEAF_COLOUR_GRADE, 4, DAY))).isNaN();
    }

    @Test
    void lastYearsShootsDoNotMakeTheIndexOldUntilNewOnesHaveGrown() {
        var june = LocalDate.of(2026, 6, 10);
        var measured = LocalDate.of(2025, 10, 5);
        var tree = green(june).seen(Fact.SHOOT_EXTENSION_MM, 120, measured);
        assertThat(tree.facts(pine(50)).find(Fact.VIGOUR_INDEX).observedOn()).isEqualTo(june);
        var later = green(DAY).seen(Fact.SHOOT_EXTENSION_MM, 120, measured);
        assertThat(later.facts(pine(50)).find(Fact.VIGOUR_INDEX).observedOn()).isEqualTo(measured);
    }

    @Test
    void gradesOfBeforeLeafFallHoldThroughTheRest() {
        var february = LocalDate.of(2027, 2, 10);
        var tree =
                treeOn(february)
                        .seen(Fact.LEAF_COLOUR_GRADE, 4, DAY)
                        .seen(Fact.FOLIAGE_LOSS_PERCENT, 3, DAY)
                        .seen(Fact.DIEBACK_PERCENT, 0, DAY)
                        .seen(Fact.SHOOT_EXTENSION_MM, 120, DAY);
        assertThat(index(tree)).isCloseTo(10 + 22.5 * 3.25, within(1e-9));
    }

    @Test
    void aStudentsLookStaysAStudentsAndDoesNotPutAsideAnInstructorsJudgement() {
        var own =
                treeOn(DAY)
                        .seen(Fact.LEAF_COLOUR_GRADE, Value.of(4.0), DAY, Source.STUDENT)
                        .seen(Fact.FOLIAGE_LOSS_PERCENT, 3, DAY)
                        .seen(Fact.DIEBACK_PERCENT, 0, DAY);
        assertThat(own.facts(pine(50)).find(Fact.VIGOUR_INDEX).source()).isEqualTo(Source.STUDENT);
        own.seen(Fact.VIGOUR_INDEX, 84, DAY.minusDays(30));
        assertThat(index(own)).isEqualTo(84);
        own.seen(Fact.FOLIAGE_LOSS_PERCENT, 45, DAY);
        assertThat(index(own)).isEqualTo(55);
    }

    @Test
    void aJudgementSaysNoMoreThanWasSeenOfTheTree() {
        var tree = treeOn(DAY).seen(Fact.VIGOUR_INDEX, 92, DAY).seen(Fact.VIGOUR_INDEX, 95, DAY);
        assertThat(index(tree)).isEqualTo(95);
        tree.seen(Fact.DIEBACK_PERCENT, 55, DAY.minusDays(100));
        assertThat(index(tree)).isEqualTo(10);
        assertThat(tree.facts(pine(50)).find(Fact.VIGOUR_INDEX).by())
                .isEqualTo("a judgement of 95, held to what the share of dead twigs allows");
        tree.seen(Fact.DIEBACK_PERCENT, 8, DAY);
        assertThat(index(tree)).isEqualTo(55);
        tree.seen(Fact.DIEBACK_PERCENT, 0, DAY.plusDays(0));
        assertThat(index(tree)).isEqualTo(95);
    }

    @Test
    void aJudgementStandsAgainstWhatWasSeenTooLongBefore() {
        var tree =
                treeOn(DAY)
                        .seen(Fact.DIEBACK_PERCENT, 55, DAY.minusDays(181))
                        .seen(Fact.VIGOUR_INDEX, 92, DAY);
        assertThat(tree.facts().number(Fact.VIGOUR_INDEX)).isEqualTo(92);
        tree.seen(Fact.DIEBACK_PERCENT, 55, DAY.minusDays(180));
        assertThat(tree.facts().number(Fact.VIGOUR_INDEX)).isEqualTo(10);
    }

    /** Which shoots were measured is a matter of judgement, so they count one grade better. */
    @Test
    void shootsLeaveAJudgementOneGradeMore() {
        var tree = treeOn(DAY).seen(Fact.SHOOT_EXTENSION_RATIO, 0, DAY);
        tree.seen(Fact.VIGOUR_INDEX, 92, DAY);
        assertThat(index(tree)).isEqualTo(32.5);
        tree.seen(Fact.SHOOT_EXTENSION_RATIO, 0.7, DAY);
        assertThat(index(tree)).isEqualTo(77.5);
        tree.seen(Fact.SHOOT_EXTENSION_RATIO, 1, DAY);
        assertThat(index(tree)).isEqualTo(92);
    }

    @Test
    void betterGradesNeverMakeATreeWeakerAndNothingLiftsItAboveItsBounds() {
        long seed = 20261130;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 500; round++) {
            double[] grades = {
                dice.nextDouble(0, 300),
                dice.nextDouble(0, 4),
                dice.nextDouble(0, 100),
                dice.nextDouble(0, 100),
                dice.nextDouble(1, 300)
            };
            boolean shoots = dice.nextInt(4) > 0;
            boolean earlier = dice.nextBoolean();
            double now = index(random(grades, shoots, earlier));
            assertThat(now).isBetween(0.0, shoots ? 100.0 : VigourIndex.MOST_WITH_GAPS);
            double[] better = grades.clone();
            better[0] += dice.nextDouble(0, 100);
            better[1] += dice.nextDouble() * (4 - better[1]);
            better[2] *= dice.nextDouble();
            better[3] *= dice.nextDouble();
            assertThat(index(random(better, shoots, earlier)))
                    .as("seed %d, round %d", seed, round)
                    .isGreaterThanOrEqualTo(now - 1e-9);
        }
    }

    private static RecordOf random(double[] grades, boolean shoots, boolean earlier) {
        var tree =
                treeOn(DAY)
                        .seen(Fact.LEAF_COLOUR_GRADE, grades[1], DAY)
                        .seen(Fact.FOLIAGE_LOSS_PERCENT, grades[2], DAY)
                        .seen(Fact.DIEBACK_PERCENT, grades[3], DAY);
        if (shoots) {
            tree.seen(Fact.SHOOT_EXTENSION_MM, grades[0], DAY);
            if (earlier) {
                tree.seen(Fact.SHOOT_EXTENSION_MM, grades[4], DAY.minusYears(1));
            }
        }
        return tree;
    }

    @Test
    void southOfTheEquatorItIsTheSameHalfAYearLater() {
        for (int ago = 0; ago < 400; ago += 20) {
            var north = aged(DAY, ago).facts(pine(50)).find(Fact.VIGOUR_INDEX);
            var on = DAY.plusDays(182);
            var south = aged(on, ago).atLatitude(-50).facts(pine(-50)).find(Fact.VIGOUR_INDEX);
            assertThat(south.value()).isEqualTo(north.value());
            assertThat(south.observedOn()).isEqualTo(north.observedOn().plusDays(182));
        }
    }

    private static RecordOf aged(LocalDate on, int ago) {
        return green(on)
                .seen(Fact.SHOOT_EXTENSION_MM, 100, on.minusDays(ago))
                .seen(Fact.SHOOT_EXTENSION_MM, 130, on.minusDays(ago + 365L));
    }
}
