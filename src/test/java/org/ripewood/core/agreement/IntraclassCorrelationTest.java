package org.ripewood.core.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class IntraclassCorrelationTest {

    /** Shrout and Fleiss 1979, table 2: six targets, four judges. */
    private static final List<List<Double>> SHROUT_AND_FLEISS =
            List.of(
                    List.of(9.0, 2.0, 5.0, 8.0),
                    List.of(6.0, 1.0, 3.0, 2.0),
                    List.of(8.0, 4.0, 6.0, 8.0),
                    List.of(7.0, 1.0, 2.0, 6.0),
                    List.of(10.0, 5.0, 6.0, 9.0),
                    List.of(6.0, 2.0, 4.0, 7.0));

    /** Six places worked by a second program; two places as Shrout and Fleiss print them. */
    @ParameterizedTest
    @CsvSource({
        "ONE_WAY_SINGLE, 0.165742, .17",
        "TWO_WAY_RANDOM_SINGLE, 0.289764, .29",
        "TWO_WAY_FIXED_SINGLE, 0.714841, .71",
        "ONE_WAY_MEAN, 0.442797, .44",
        "TWO_WAY_RANDOM_MEAN, 0.620051, .62",
        "TWO_WAY_FIXED_MEAN, 0.909316, .91"
    })
    void thePublishedTableHasItsCorrelations(IccForm form, double worked, double printed) {
        double value = icc(SHROUT_AND_FLEISS, form).value();
        assertThat(value).isCloseTo(worked, within(5e-7));
        assertThat(value).isCloseTo(printed, within(5e-3));
    }

    /**
     * Intervals as the R package psych prints them for this table, lower to three and upper to two
     * places; six places worked by a second program, (2,k) by the formula of McGraw and Wong.
     */
    @ParameterizedTest
    @CsvSource({
        "ONE_WAY_SINGLE, -.133, .72, -0.132932, 0.722560",
        "TWO_WAY_RANDOM_SINGLE, .019, .76, 0.018787, 0.761084",
        "TWO_WAY_FIXED_SINGLE, .342, .95, 0.342465, 0.945858",
        "ONE_WAY_MEAN, -.884, .91, -0.884442, 0.912415",
        "TWO_WAY_RANDOM_MEAN, .071, .93, 0.071137, 0.927232",
        "TWO_WAY_FIXED_MEAN, .676, .99, 0.675675, 0.985892"
    })
    void thePublishedTableHasItsIntervals(
            IccForm form, double lower, double upper, double workedLower, double workedUpper) {
        var interval = icc(SHROUT_AND_FLEISS, form).interval();
        assertThat(interval.lower()).isCloseTo(lower, within(5e-4));
        assertThat(interval.upper()).isCloseTo(upper, within(5e-3));
        assertThat(interval.lower()).isCloseTo(workedLower, within(5e-7));
        assertThat(interval.upper()).isCloseTo(workedUpper, within(5e-7));
    }

    /** Shrout and Fleiss 1979, table 3: 11.24, 6.26, 32.49, 1.02; six places worked. */
    @Test
    void thePublishedTableHasItsMeanSquares() {
        var squares = icc(SHROUT_AND_FLEISS, IccForm.ONE_WAY_SINGLE).squares();
        assertThat(squares.betweenTargets()).isCloseTo(11.241667, within(5e-7));
        assertThat(squares.withinTargets()).isCloseTo(6.263889, within(5e-7));
        assertThat(squares.betweenJudges()).isCloseTo(32.486111, within(5e-7));
        assertThat(squares.error()).isCloseTo(1.019444, within(5e-7));
        assertThat(squares.targets()).isEqualTo(6);
        assertThat(squares.judges()).isEqualTo(4);
    }

    @ParameterizedTest
    @EnumSource
    void judgesWhoNeverDifferAgreeFully(IccForm form) {
        var scores =
                List.of(List.of(0.1, 0.1, 0.1), List.of(0.7, 0.7, 0.7), List.of(4.0, 4.0, 4.0));
        var answer = IntraclassCorrelation.of(scores, form, 0.95);
        assertThat(answer.find().orElseThrow().value()).isEqualTo(1);
        assertThat(answer.find().orElseThrow().interval()).isEqualTo(new Interval(1, 1, 0.95));
        assertThat(((Answer.Available<?>) answer).remarks()).contains(Remarks.NO_WIDTH);
    }

    @Test
    void aStricterJudgeCountsAgainstFormTwoButNotThree() {
        var scores = List.of(List.of(1.1, 2.2), List.of(3.3, 4.4), List.of(7.7, 8.8));
        assertThat(icc(scores, IccForm.TWO_WAY_FIXED_SINGLE).value()).isEqualTo(1);
        assertThat(icc(scores, IccForm.TWO_WAY_RANDOM_SINGLE).value()).isBetween(0.5, 0.99);
    }

    @ParameterizedTest
    @EnumSource
    void scoresThatDoNotVaryHaveNoCorrelation(IccForm form) {
        assertThat(because(List.of(List.of(0.3, 0.3), List.of(0.3, 0.3)), form))
                .contains("all scores are the same");
    }

    /** Row means alike: (1,1) is at its least, -1/(k - 1), and a mean has no bound (by hand). */
    @Test
    void targetsThatDoNotDifferHaveTheLeastCorrelationAndNoneOfTheMean() {
        var scores =
                List.of(List.of(1.0, 2.0, 3.0), List.of(3.0, 1.0, 2.0), List.of(2.0, 3.0, 1.0));
        assertThat(icc(scores, IccForm.ONE_WAY_SINGLE).value()).isCloseTo(-0.5, within(1e-12));
        assertThat(icc(scores, IccForm.TWO_WAY_FIXED_SINGLE).value())
                .isCloseTo(-0.5, within(1e-12));
        for (var form : IccForm.values()) {
            if (form.isOfMean()) {
                assertThat(because(scores, form)).contains("differs too little", form.notation());
            }
        }
    }

    @Test
    void onlySeverityDiffersSoFormThreeHasNothingToTell() {
        var scores = List.of(List.of(1.0, 2.0), List.of(1.0, 2.0), List.of(1.0, 2.0));
        assertThat(because(scores, IccForm.TWO_WAY_FIXED_SINGLE)).contains("differs too little");
        assertThat(icc(scores, IccForm.TWO_WAY_RANDOM_SINGLE).value()).isZero();
    }

    @Test
    void missingScoresAreCountedAndRefused() {
        var scores = List.of(Arrays.asList(1.0, null), List.of(2.0, 3.0), Arrays.asList(null, 1.0));
        assertThat(because(scores, IccForm.ONE_WAY_SINGLE)).contains("2 of 6 scores are missing");
    }

    @Test
    void oneJudgeOrOneTargetIsTooFew() {
        assertThat(because(List.of(List.of(1.0), List.of(2.0)), IccForm.ONE_WAY_SINGLE))
                .contains("found 1 and 2");
        assertThat(because(List.of(List.of(1.0, 2.0)), IccForm.ONE_WAY_SINGLE))
                .contains("found 2 and 1");
        assertThat(because(List.of(), IccForm.ONE_WAY_SINGLE)).contains("found 0 and 0");
    }

    /** 10 targets: common practice, no source. */
    @Test
    void fewTargetsAreRemarkedOn() {
        var answer =
                (Answer.Available<IntraclassCorrelation>)
                        IntraclassCorrelation.of(SHROUT_AND_FLEISS, IccForm.ONE_WAY_SINGLE, 0.95);
        assertThat(answer.remarks()).singleElement().asString().contains("6, fewer than 10");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e51})
    void whatIsNoScoreIsRefused(double score) {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                icc(
                                        List.of(List.of(1.0, score), List.of(1.0, 2.0)),
                                        IccForm.ONE_WAY_SINGLE))
                .withMessageContaining(String.valueOf(score));
    }

    @Test
    void rowsOfDifferentLengthsAndNoConfidencesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> icc(List.of(List.of(1.0, 2.0), List.of(1.0)), IccForm.ONE_WAY_SINGLE))
                .withMessageContaining("expected 2 scores in row 1, found 1");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                IntraclassCorrelation.of(
                                        SHROUT_AND_FLEISS, IccForm.ONE_WAY_SINGLE, Double.NaN));
    }

    private static IntraclassCorrelation icc(List<List<Double>> scores, IccForm form) {
        return IntraclassCorrelation.of(scores, form, 0.95).find().orElseThrow();
    }

    private static String because(List<List<Double>> scores, IccForm form) {
        return ((Answer.NotAvailable<IntraclassCorrelation>)
                        IntraclassCorrelation.of(scores, form, 0.95))
                .because();
    }
}
