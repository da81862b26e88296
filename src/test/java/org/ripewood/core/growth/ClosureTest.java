package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

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
        assertThat(wound.stalled()).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "closing in the season,             20, 12, false",
        "closing by more than the error,    20, 19.4, false",
        "closing by the error,              20, 19.5, true",
        "standing still,                    20, 20, true",
        "opened again,                      10, 14, true",
        "standing still but nearly closed,  4.5, 4.5, false"
    })
    void aWoundThatDoesNotNarrowInASeasonHasStalled(
            String what, double beforeMm, double nowMm, boolean stalled) {
        var wound =
                Closure.of(
                        MADE,
                        24,
                        List.of(
                                new Look(MADE.plusDays(200), beforeMm),
                                new Look(MADE.plusDays(380), nowMm)));
        assertThat(wound.stalled()).as(what).isEqualTo(stalled);
    }

    @Test
    void beforeASeasonIsOverNobodyCanTell() {
        assertThat(wound(24, 179, 24).stalled()).isFalse();
        assertThat(wound(24, 180, 24).stalled()).isTrue();
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
        assertThat(wound.stalled()).isFalse();
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

    private static Closure wound(double firstMm, int days, double openMm) {
        return Closure.of(MADE, firstMm, List.of(new Look(MADE.plusDays(days), openMm)));
    }
}
