package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.growth.AgedVigour.Seen;
import org.ripewood.core.season.GrowingDays;
import org.ripewood.core.season.StageDays;

/** Shares and half-lives are common practice, no source; their arithmetic is checked by hand. */
@Tag("fast")
class AgedVigourTest {

    private static final LocalDate TODAY = LocalDate.of(2024, 7, 1);

    private static AgedVigour of(Seen... looks) {
        return AgedVigour.of(List.of(looks), TODAY, GrowingDays.EVERY_DAY).orElseThrow();
    }

    private static Seen seen(VigourGrade of, double grade, int daysAgo) {
        return new Seen(of, grade, TODAY.minusDays(daysAgo));
    }

    @Test
    void seenTodayItIsTheIndex() {
        var today =
                of(
                        seen(VigourGrade.SHOOT, 3, 0),
                        seen(VigourGrade.FOLIAGE, 3, 0),
                        seen(VigourGrade.COLOUR, 4, 0),
                        seen(VigourGrade.DIEBACK, 4, 0));
        // 25 (0.35 * 3 + 0.25 * 3 + 0.20 * 4 + 0.20 * 4) = 85, of which grade 3 allows 77.5
        assertThat(today.index()).isCloseTo(77.5, within(1e-9));
        assertThat(today.certainty()).isCloseTo(1, within(1e-12));
        assertThat(today.unseen()).isEmpty();
    }

    /**
     * Colour of 60 days ago weighs 0.20 / 2 against 0.25: 25 (0.25 * 3 + 0.1 * 2) / 0.35 = 67.86,
     * of which grade 2 allows 55; foliage 2 and colour 1.5: 25 (0.25 * 2 + 0.1 * 1.5) / 0.35.
     */
    @Test
    void afterItsHalfLifeAGradeCountsHalf() {
        var aged = of(seen(VigourGrade.FOLIAGE, 3, 0), seen(VigourGrade.COLOUR, 2, 60));
        assertThat(aged.index()).isCloseTo(55, within(1e-9));
        var low = of(seen(VigourGrade.FOLIAGE, 2, 0), seen(VigourGrade.COLOUR, 1.5, 60));
        assertThat(low.index()).isCloseTo(43.75, within(1e-9));
        var lower = of(seen(VigourGrade.FOLIAGE, 0.5, 0), seen(VigourGrade.COLOUR, 0.4, 60));
        assertThat(lower.index()).isCloseTo(25 * (0.25 * 0.5 + 0.1 * 0.4) / 0.35, within(1e-9));
        assertThat(aged.certainty()).isCloseTo(0.35, within(1e-12));
        assertThat(aged.unseen()).containsExactlyInAnyOrder(VigourGrade.SHOOT, VigourGrade.DIEBACK);
    }

    /** Two looks at shoots, one a year old: (1 * 4 + 1/2 * 1) / 1.5 = 3 of 4. */
    @Test
    void olderLooksAtOneThingCountLess() {
        var aged = of(seen(VigourGrade.SHOOT, 1, 365), seen(VigourGrade.SHOOT, 4, 0));
        assertThat(aged.index()).isCloseTo(75, within(1e-9));
    }

    @Test
    void nothingSeenOrOnlyToComeTellsNothing() {
        assertThat(AgedVigour.of(List.of(), TODAY, GrowingDays.EVERY_DAY)).isEmpty();
        var tomorrow = List.of(seen(VigourGrade.COLOUR, 4, -1));
        assertThat(AgedVigour.of(tomorrow, TODAY, GrowingDays.EVERY_DAY)).isEmpty();
    }

    @Test
    void aBetterGradeNeverMakesATreeWeakerNorWaitingItMoreCertain() {
        long seed = 30_411;
        var grades = List.of(VigourGrade.values());
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 1_000; round++) {
            var looks = new ArrayList<Seen>();
            for (int i = dice.nextInt(1, 9); i > 0; i--) {
                var grade = grades.get(dice.nextInt(4));
                looks.add(seen(grade, dice.nextDouble(0, 4), dice.nextInt(0, 900)));
            }
            var now = AgedVigour.of(looks, TODAY, GrowingDays.EVERY_DAY).orElseThrow();
            var day = TODAY.plusDays(dice.nextInt(1, 400));
            var later = AgedVigour.of(looks, day, GrowingDays.EVERY_DAY).orElseThrow();
            assertThat(later.certainty())
                    .as("seed %d, round %d", seed, round)
                    .isLessThan(now.certainty());
            var shuffled = new ArrayList<>(looks);
            Collections.shuffle(shuffled, new Random(round));
            assertThat(AgedVigour.of(shuffled, TODAY, GrowingDays.EVERY_DAY).orElseThrow().index())
                    .isCloseTo(now.index(), within(1e-9));
            var first = looks.get(0);
            double higher = first.grade() + dice.nextDouble() * (4 - first.grade());
            looks.set(0, new Seen(first.of(), higher, first.on()));
            assertThat(AgedVigour.of(looks, TODAY, GrowingDays.EVERY_DAY).orElseThrow().index())
                    .as("seed %d, round %d", seed, round)
                    .isGreaterThanOrEqualTo(now.index() - 1e-9);
        }
    }

    @Test
    void withOneGradeMissingItIsHeldBackAndWithTwoItIsNotTold() {
        var three =
                of(
                        seen(VigourGrade.FOLIAGE, 4, 0),
                        seen(VigourGrade.COLOUR, 4, 0),
                        seen(VigourGrade.DIEBACK, 4, 0));
        assertThat(three.index()).isCloseTo(100, within(1e-9));
        assertThat(three.told()).hasValue(VigourIndex.MOST_WITH_GAPS);
        assertThat(of(seen(VigourGrade.FOLIAGE, 4, 0), seen(VigourGrade.COLOUR, 4, 0)).told())
                .isEmpty();
    }

    @Test
    void atRestNothingAges() {
        var resting = new StageDays(day -> 0);
        var look = List.of(seen(VigourGrade.COLOUR, 3, 170));
        assertThat(AgedVigour.of(look, TODAY, resting).orElseThrow().certainty())
                .isCloseTo(VigourGrade.COLOUR.share(), within(1e-12));
    }

    @Test
    void whatIsNoGradeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> seen(VigourGrade.COLOUR, Double.NaN, 0))
                .withMessageContaining("COLOUR");
        assertThatIllegalArgumentException().isThrownBy(() -> seen(VigourGrade.SHOOT, 4.1, 0));
    }
}
