package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grades and weights are common practice, no source; their arithmetic is checked by hand. */
@Tag("fast")
class VigourIndexTest {

    @Test
    void aTreeOfGradesThreeThreeFourFourScoresThreePointFour() {
        // 0.35 * 3 + 0.25 * 3 + 0.20 * 4 + 0.20 * 4 = 1.05 + 0.75 + 0.80 + 0.80
        var vigour = new VigourIndex(3, 3, 4, 4);
        assertThat(vigour.score()).isCloseTo(3.40, within(1e-12));
        assertThat(vigour.value()).isCloseTo(85, within(1e-10));
    }

    @Test
    void theSameTreeMeasuredGetsTheSameGrades() {
        assertThat(VigourIndex.graded(1.0, 20, 4, 0)).isEqualTo(new VigourIndex(3, 3, 4, 4));
    }

    @Test
    void theWeakestTreeHasNothingAndTheStrongestAHundred() {
        assertThat(VigourIndex.graded(0, 100, 0, 100).value()).isZero();
        assertThat(VigourIndex.graded(1.2, 0, 4, 0).value()).isEqualTo(100);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0", "0.39, 0", "0.4, 1", "0.69, 1", "0.7, 2", "0.89, 2", "0.9, 3", "1.19, 3", "1.2, 4",
        "5, 4"
    })
    void shootsAreGradedAgainstEarlierSeasons(double ratio, int grade) {
        assertThat(VigourIndex.shootGrade(ratio)).isEqualTo(grade);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 4", "0.1, 3", "4.9, 3", "5, 2", "14.9, 2", "15, 1", "29.9, 1", "30, 0", "100, 0"
    })
    void deadTwigsAreGraded(double percent, int grade) {
        assertThat(VigourIndex.diebackGrade(percent)).isEqualTo(grade);
    }

    @ParameterizedTest
    @CsvSource({
        "-0.1, 0, 4, 0",
        "NaN, 0, 4, 0",
        "1, 101, 4, 0",
        "1, 0, 4.1, 0",
        "1, 0, NaN, 0",
        "1, 0, 4, -1"
    })
    void whatCannotBeMeasuredIsRefused(double shoot, double loss, double colour, double dieback) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> VigourIndex.graded(shoot, loss, colour, dieback));
    }

    @Test
    void moreLossOrDiebackNeverMakesATreeStronger() {
        long seed = 20_240_611;
        var dice = new SplittableRandom(seed);
        for (int i = 0; i < 2_000; i++) {
            double shoot = dice.nextDouble(0, 5);
            double loss = dice.nextDouble(0, 100);
            double colour = dice.nextDouble(0, 4);
            double dieback = dice.nextDouble(0, 100);
            double now = VigourIndex.graded(shoot, loss, colour, dieback).value();
            double moreLoss = dice.nextDouble(loss, 100.000001);
            double moreDieback = dice.nextDouble(dieback, 100.000001);
            assertThat(
                            VigourIndex.graded(
                                            shoot,
                                            Math.min(100, moreLoss),
                                            colour,
                                            Math.min(100, moreDieback))
                                    .value())
                    .as("seed %d, round %d", seed, i)
                    .isLessThanOrEqualTo(now);
            assertThat(now).isBetween(0.0, 100.0);
        }
    }
}
