package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths and grades are common practice, no source; their arithmetic is checked by hand. */
@Tag("fast")
class ShootGradeTest {

    private static final ShootLengths PINE = new ShootLengths(35, 80, 160, 350);
    private static final ShootLengths FIG = new ShootLengths(60, 130, 300, 1000);

    private static double grade(ShootLengths kind, Double mm, Double ratio, boolean inGround) {
        return new ShootGrade(mm, ratio, inGround, kind).value().orElseThrow();
    }

    @Test
    void aTreeThatHasAlwaysBeenWeakIsWeak() {
        // 9 of 35 mm is a quarter of the way to grade 1, though it is as long as every year
        assertThat(grade(PINE, 9.0, 1.0, false)).isCloseTo(9.0 / 35, within(1e-12));
    }

    @Test
    void aStrongTreeThatWasStrongerBeforeIsStrong() {
        assertThat(grade(FIG, 310.0, 310.0 / 480, false)).isEqualTo(4);
        assertThat(grade(FIG, 290.0, 290.0 / 480, false)).isLessThan(2);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "35, 1", "80, 2.5", "120, 3.25", "160, 4", "900, 4"})
    void lengthsAreGradedInAPot(double mm, double grade) {
        assertThat(grade(PINE, mm, null, false)).isCloseTo(grade, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"35, 1", "80, 2", "160, 3", "255, 3.5", "350, 4"})
    void inTheGroundMoreIsAskedFor(double mm, double grade) {
        assertThat(grade(PINE, mm, null, true)).isCloseTo(grade, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.4, 1", "0.55, 1.5", "0.7, 2", "0.9, 3", "1.05, 3.5", "1.2, 4", "5, 4"})
    void withoutALengthTheRatioAloneIsGraded(double ratio, double grade) {
        assertThat(grade(PINE, null, ratio, false)).isCloseTo(grade, within(1e-12));
        assertThat(grade(null, 50.0, ratio, false)).isCloseTo(grade, within(1e-12));
    }

    @Test
    void withNeitherThereIsNoGrade() {
        assertThat(new ShootGrade(null, null, false, PINE).value()).isEmpty();
        assertThat(new ShootGrade(50.0, null, false, null).value()).isEmpty();
    }

    @Test
    void longerShootsNeverGiveALowerGradeAndTheGroundNeverAHigher() {
        long seed = 20261130;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 2_000; round++) {
            double mm = dice.nextDouble(0, 500);
            double before = dice.nextDouble(1, 600);
            double longer = mm + dice.nextDouble(0, 300);
            boolean ground = dice.nextBoolean();
            double now = grade(PINE, mm, mm / before, ground);
            assertThat(now).isBetween(0.0, 4.0);
            assertThat(grade(PINE, longer, longer / before, ground))
                    .as("seed %d, round %d", seed, round)
                    .isGreaterThanOrEqualTo(now - 1e-12);
            assertThat(grade(PINE, mm, null, true))
                    .isLessThanOrEqualTo(grade(PINE, mm, null, false) + 1e-12);
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShootLengths(35, 35, 160, 350))
                .withMessageContaining("weak < fair");
        assertThatIllegalArgumentException().isThrownBy(() -> new ShootLengths(0, 35, 160, 350));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShootGrade(-1.0, null, false, PINE));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShootGrade(null, Double.NaN, false, PINE));
    }
}
