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
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ripewood.core.growth.Closure.Look;
import org.ripewood.core.season.GrowthDays;

/** When a wound counts as open or stalled is common practice, no source. */
@Tag("fast")
class ClosureTest {

    private static final LocalDate MADE = LocalDate.of(2024, 3, 1);

    @ParameterizedTest
    @CsvSource({"24, 0", "18, 25", "6, 75", "0, 100", "30, 0"})
    void closureIsTheShareOfTheFirstWidthThatIsGone(double openMm, double percent) {
        assertThat(wound(24, 100, openMm).percent()).isEqualTo(percent);
    }

    @ParameterizedTest
    @CsvSource({"5, true", "4.9, false", "0, false"})
    void fromFiveMillimetresOnAWoundIsOpen(double openMm, boolean open) {
        assertThat(wound(24, 100, openMm).open()).isEqualTo(open);
    }

    @Test
    void aWoundNobodyHasReadIsAsWideAsItWasMade() {
        var wound = Closure.of(MADE, 24, List.of());
        assertThat(wound.latest()).isEqualTo(new Look(MADE, 24));
        assertThat(wound.percent()).isZero();
        assertThat(stalled(wound)).isFalse();
    }

    /** Read in spring and in autumn for a year and more, as the error of reading allows. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "closing on,                        20, 18, 16, 14, false",
        "standing still,                    20, 20, 20, 20, true",
        "standing still within the errors,  20, 20.5, 19.6, 20.2, true",
        "standing still but nearly closed,  4.5, 4.5, 4.5, 4.5, false"
    })
    void aWoundThatDoesNotNarrowInASeasonHasStalled(
            String what, double first, double second, double third, double last, boolean stalled) {
        var looks =
                List.of(
                        new Look(MADE.plusDays(370), first),
                        new Look(MADE.plusDays(550), second),
                        new Look(MADE.plusDays(730), third),
                        new Look(MADE.plusDays(910), last));
        assertThat(stalled(Closure.of(MADE, 26, looks))).as(what).isEqualTo(stalled);
    }

    @Test
    void beforeASeasonIsOverNobodyCanTell() {
        var looks = new ArrayList<Look>();
        looks.add(new Look(MADE.plusDays(600), 14));
        looks.add(new Look(MADE.plusDays(860), 14));
        assertThat(stalled(Closure.of(MADE, 26, looks))).isFalse();
        looks.add(new Look(MADE.plusDays(1000), 14));
        assertThat(stalled(Closure.of(MADE, 26, looks))).isTrue();
    }

    /** A difference errors of reading explain in one of a thousand is none yet. */
    @ParameterizedTest
    @CsvSource({"12, false", "14.1, false", "14.3, true", "18, true"})
    void onlyWhatIsNearlyCertainHasOpenedAgain(double nowMm, boolean opened) {
        var closure =
                Closure.of(
                        MADE,
                        24,
                        List.of(
                                new Look(MADE.plusDays(400), 12),
                                new Look(MADE.plusDays(600), nowMm)));
        assertThat(closure.reopened()).isEqualTo(opened);
        assertThat(closure.narrowestBeforeMm()).isEqualTo(opened ? 12 : nowMm);
    }

    /** Each look lies within the error of the one before, the last one far above the first. */
    @Test
    void oneThatOpensSlowlyHasOpenedAgain() {
        var looks =
                List.of(
                        new Look(MADE.plusDays(400), 12),
                        new Look(MADE.plusDays(500), 13),
                        new Look(MADE.plusDays(600), 14),
                        new Look(MADE.plusDays(700), 15));
        var closure = Closure.of(MADE, 24, looks);
        assertThat(closure.reopened()).isTrue();
        assertThat(closure.narrowestBeforeMm()).isEqualTo(12);
        assertThat(closure.sinceReopened()).containsExactly(looks.get(3));
    }

    @Test
    void looksOfOneDayAreTheirMeanAndOffByLess() {
        var day = MADE.plusDays(400);
        var closure =
                Closure.of(
                        MADE,
                        24,
                        List.of(new Look(day, 13.5), new Look(day, 12), new Look(day, 12)));
        assertThat(closure.latest()).isEqualTo(new Look(day, 12.5, 3));
        assertThat(closure.latest().errorMm()).isCloseTo(0.5 / Math.sqrt(3), within(1e-12));
        assertThat(closure.reopened()).isFalse();
    }

    @Test
    void aWoundThatReopenedOnceAndClosesSinceHasNotStalled() {
        var wound =
                Closure.of(
                        MADE,
                        30,
                        List.of(
                                new Look(MADE.plusDays(200), 10),
                                new Look(MADE.plusDays(300), 20),
                                new Look(MADE.plusDays(600), 12)));
        assertThat(stalled(wound)).isFalse();
    }

    @Test
    void theOrderOfLooksDoesNotMatter() {
        long seed = 99_173;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 300; round++) {
            var looks =
                    new ArrayList<>(
                            Stream.iterate(1, i -> i + 1)
                                    .limit(dice.nextInt(1, 8))
                                    .map(
                                            i ->
                                                    new Look(
                                                            MADE.plusDays(60L * i),
                                                            dice.nextDouble(0, 40)))
                                    .toList());
            var expected = Closure.of(MADE, 30, looks);
            Collections.shuffle(looks, new Random(dice.nextLong()));
            assertThat(Closure.of(MADE, 30, looks))
                    .as("seed %d, round %d", seed, round)
                    .isEqualTo(expected);
        }
    }

    @Test
    void whatIsNoWidthIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Look(MADE, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Look(MADE, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Closure(List.of()));
    }

    private static boolean stalled(Closure closure) {
        return closure.stalled(ClosingBelief.of(CallusPace.MODERATE.belief()), GrowthDays.plain());
    }

    private static Closure wound(double firstMm, int days, double openMm) {
        return Closure.of(MADE, firstMm, List.of(new Look(MADE.plusDays(days), openMm)));
    }
}
