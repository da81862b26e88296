package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grades and weights are common practice, no source; their arithmetic is checked by hand. */
@Tag("fast")
class VigourIndexTest {

    /** Allowed by the poorest: 10 + 22.5 × 3 = 77.5, 10 + 22.5 × 1 = 32.5. */
    @ParameterizedTest
    @CsvSource({"4, 4, 100", "3.4, 3, 77.5", "3, 3, 75", "3.7, 1, 32.5", "2.6, 0, 10", "0, 0, 0"})
    void theMeanCountsUpToWhatThePoorestGradeAllows(double mean, double poorest, double index) {
        assertThat(VigourIndex.of(mean, poorest)).isCloseTo(index, within(1e-9));
    }

    /** The rubric of vigour of the course content gives 10, 32 and 55 to its first three levels. */
    @ParameterizedTest
    @CsvSource({"0, 10", "1, 32", "2, 55"})
    void aTreeIsNoStrongerThanTheRubricCallsItsPoorestSign(double poorest, double level) {
        assertThat(VigourIndex.of(4, poorest)).isCloseTo(level, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"0, 4", "10, 4", "10.1, 3", "25, 3", "26, 2", "60, 2", "61, 1", "100, 0"})
    void missingFoliageIsGradedByItsClass(double percent, int grade) {
        assertThat(VigourIndex.lossGrade(percent)).isEqualTo(grade);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 4", "0.1, 3", "4.9, 3", "5, 2", "14.9, 2", "15, 1", "29.9, 1", "30, 0", "100, 0"
    })
    void deadTwigsAreGraded(double percent, int grade) {
        assertThat(VigourIndex.diebackGrade(percent)).isEqualTo(grade);
    }

    @Test
    void whatCannotBeMeasuredIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> VigourIndex.lossGrade(101));
        assertThatIllegalArgumentException().isThrownBy(() -> VigourIndex.diebackGrade(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> VigourIndex.diebackGrade(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> VigourIndex.of(4.1, 4));
        assertThatIllegalArgumentException().isThrownBy(() -> VigourIndex.of(4, Double.NaN));
    }
}
