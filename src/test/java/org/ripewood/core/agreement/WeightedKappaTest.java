package org.ripewood.core.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("fast")
class WeightedKappaTest {

    private static final Offset<Double> TO_SIX_PLACES = within(5e-7);
    private static final Offset<Double> TO_FOUR_PLACES = within(5e-5);
    private static final Offset<Double> TO_THREE_PLACES = within(5e-4);

    /** Cohen 1968, table 1: shares of 200, told as counts. */
    private static final GradeTable COHEN =
            GradeTable.of(new long[][] {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}});

    private static final GradeTable FLEISS_COHEN_EVERITT =
            GradeTable.of(new long[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}});

    private static final Weighting COHENS =
            new Weighting.Given(
                    List.of(
                            List.of(0.0, 1.0, 3.0),
                            List.of(1.0, 0.0, 6.0),
                            List.of(3.0, 6.0, 0.0)));

    private static final Weighting COHENS_LOPSIDED =
            new Weighting.Given(
                    List.of(
                            List.of(0.0, 1.0, 4.0),
                            List.of(1.0, 0.0, 6.0),
                            List.of(2.0, 2.0, 0.0)));

    private static final Weighting FLEISSS =
            new Weighting.Given(
                    List.of(
                            List.of(0.0, 1.0, 0.5556),
                            List.of(1.0, 0.0, 0.3333),
                            List.of(0.5556, 0.3333, 0.0)));

    @Test
    void cohensTableHasThePublishedKappas() {
        assertThat(kappa(COHEN, new Weighting.Unweighted()).value())
                .isCloseTo(.492, TO_THREE_PLACES);
        assertThat(kappa(COHEN, COHENS).value()).isCloseTo(.348, TO_THREE_PLACES);
        assertThat(kappa(COHEN, COHENS_LOPSIDED).value()).isCloseTo(.353, TO_THREE_PLACES);
    }

    /** Worked by a second program from the published formulas. */
    @Test
    void cohensTableHasTheKappasWorkedFromTheFormula() {
        assertThat(kappa(COHEN, new Weighting.Unweighted()).value())
                .isCloseTo(0.491525, TO_SIX_PLACES);
        assertThat(kappa(COHEN, COHENS).value()).isCloseTo(0.347826, TO_SIX_PLACES);
        assertThat(kappa(COHEN, COHENS_LOPSIDED).value()).isCloseTo(0.353383, TO_SIX_PLACES);
        assertThat(kappa(COHEN, new Weighting.Linear()).value()).isCloseTo(0.473684, TO_SIX_PLACES);
        assertThat(kappa(COHEN, new Weighting.Quadratic()).value())
                .isCloseTo(0.454545, TO_SIX_PLACES);
    }

    /** Observed and chance agreement of Cohen's table, 0.70 and 0.41, worked by hand. */
    @Test
    void disagreementIsWhatAgreementLeaves() {
        var kappa = kappa(COHEN, new Weighting.Unweighted());
        assertThat(kappa.observedDisagreement()).isCloseTo(0.30, within(1e-12));
        assertThat(kappa.expectedDisagreement()).isCloseTo(0.59, within(1e-12));
        assertThat(kappa.pairs()).isEqualTo(200);
    }

    /**
     * The table of Fleiss, Cohen and Everitt 1969; values from their formula by another program.
     */
    @Test
    void theTableOf1969HasItsKappasAndStandardErrors() {
        var nominal = kappa(FLEISS_COHEN_EVERITT, new Weighting.Unweighted());
        assertThat(nominal.value()).isCloseTo(0.428571, TO_SIX_PLACES);
        assertThat(nominal.standardError()).isCloseTo(0.053711, TO_SIX_PLACES);
        var weighted = kappa(FLEISS_COHEN_EVERITT, FLEISSS);
        assertThat(weighted.value()).isCloseTo(0.507070, TO_SIX_PLACES);
        assertThat(weighted.standardError()).isCloseTo(0.056994, TO_SIX_PLACES);
        assertThat(kappa(FLEISS_COHEN_EVERITT, new Weighting.Linear()).value())
                .isCloseTo(0.492308, TO_SIX_PLACES);
        assertThat(kappa(FLEISS_COHEN_EVERITT, new Weighting.Quadratic()).value())
                .isCloseTo(0.566667, TO_SIX_PLACES);
    }

    /** A printed example of a statistics program's manual, four places (from memory). */
    @Test
    void aPrintedExampleHasItsErrorsAndIntervals() {
        var table = GradeTable.of(new long[][] {{0, 4, 1}, {0, 8, 0}, {0, 1, 5}});
        var nominal = kappa(table, new Weighting.Unweighted());
        assertThat(nominal.value()).isCloseTo(0.4842, TO_FOUR_PLACES);
        assertThat(nominal.standardError()).isCloseTo(0.1380, TO_FOUR_PLACES);
        assertThat(nominal.interval().lower()).isCloseTo(0.2137, TO_FOUR_PLACES);
        assertThat(nominal.interval().upper()).isCloseTo(0.7547, TO_FOUR_PLACES);
        var linear = kappa(table, new Weighting.Linear());
        assertThat(linear.value()).isCloseTo(0.4701, TO_FOUR_PLACES);
        assertThat(linear.standardError()).isCloseTo(0.1457, TO_FOUR_PLACES);
        assertThat(linear.interval().lower()).isCloseTo(0.1845, TO_FOUR_PLACES);
        assertThat(linear.interval().upper()).isCloseTo(0.7558, TO_FOUR_PLACES);
    }

    /** Quadratic: two outputs published on a mathematics documentation page; others worked. */
    @Test
    void listsOfScoresHaveThePublishedKappas() {
        var a = List.of(9, 7, 8, 7, 6, 8, 3, 5, 10);
        var withB = GradeTable.ofLists(11, a, List.of(8, 8, 6, 6, 7, 6, 1, 4, 8));
        var withC = GradeTable.ofLists(11, a, List.of(3, 5, 6, 6, 7, 6, 1, 4, 8));
        assertThat(kappa(withB, new Weighting.Quadratic()).value())
                .isCloseTo(0.758620689655172, within(1e-14));
        assertThat(kappa(withC, new Weighting.Quadratic()).value())
                .isCloseTo(0.438095238095238, within(1e-14));
        assertThat(kappa(withB, new Weighting.Linear()).value()).isCloseTo(0.393782, TO_SIX_PLACES);
        assertThat(kappa(withC, new Weighting.Linear()).value()).isCloseTo(0.226244, TO_SIX_PLACES);
        assertThat(kappa(withB, new Weighting.Unweighted()).value())
                .isCloseTo(-0.157143, TO_SIX_PLACES);
        assertThat(kappa(withC, new Weighting.Unweighted()).value())
                .isCloseTo(-0.125, TO_SIX_PLACES);
    }

    /** Input of a published package example; worked by a second program. */
    @Test
    void risingScoresAgainstWanderingOnesAgreeByDistanceOnly() {
        var table =
                GradeTable.ofLists(
                        10, List.of(1, 2, 3, 4, 5, 6, 7, 8, 9), List.of(1, 3, 1, 6, 1, 5, 5, 6, 7));
        assertThat(kappa(table, new Weighting.Quadratic()).value())
                .isCloseTo(0.677966, TO_SIX_PLACES);
        assertThat(kappa(table, new Weighting.Linear()).value()).isCloseTo(0.394958, TO_SIX_PLACES);
        assertThat(kappa(table, new Weighting.Unweighted()).value()).isCloseTo(0, TO_SIX_PLACES);
    }

    @Test
    void nothingJudgedByBothHasNoKappa() {
        var table = GradeTable.ofJudgements(3, Map.of("pine", 1), Map.of("elm", 1));
        assertThat(because(table, new Weighting.Linear())).contains("nothing was judged by both");
    }

    @Test
    void oneGradeOnlyHasNoKappaAndSaysWhich() {
        var table = GradeTable.ofLists(4, List.of(2, 2, 2), List.of(2, 2, 2));
        assertThat(because(table, new Weighting.Quadratic()))
                .contains("grade 2 only")
                .contains("3 judged");
    }

    @Test
    void gradesThatWeightsHoldAlikeHaveNoKappa() {
        var alike =
                new Weighting.Given(
                        List.of(
                                List.of(0.0, 0.0, 1.0),
                                List.of(0.0, 0.0, 1.0),
                                List.of(1.0, 1.0, 0.0)));
        var table = GradeTable.ofLists(3, List.of(0, 1), List.of(1, 0));
        assertThat(because(table, alike)).contains("too lenient");
    }

    @Test
    void oneJudgeOfOneGradeAgreesAsChanceWould() {
        var table = GradeTable.ofLists(3, List.of(1, 1, 1, 1), List.of(0, 1, 2, 1));
        assertThat(kappa(table, new Weighting.Unweighted()).value()).isZero();
    }

    /** 10 pairs: common practice, no source. */
    @Test
    void fewerThanTenPairsAreRemarkedOn() {
        assertThat(remarks(GradeTable.of(new long[][] {{4, 1}, {1, 3}})))
                .singleElement()
                .asString()
                .contains("9");
        assertThat(remarks(GradeTable.of(new long[][] {{4, 1}, {1, 4}}))).isEmpty();
    }

    @Test
    void fullAgreementHasNoWidthAndSaysSo() {
        var table = GradeTable.of(new long[][] {{10, 0}, {0, 10}});
        var kappa = kappa(table, new Weighting.Linear());
        assertThat(kappa.value()).isEqualTo(1);
        assertThat(kappa.interval()).isEqualTo(new Interval(1, 1, 0.95));
        assertThat(remarks(table)).containsExactly(Remarks.NO_WIDTH);
    }

    @Test
    void onlyWhatBothJudgedIsPaired() {
        var table =
                GradeTable.ofJudgements(
                        2, Map.of("pine", 0, "elm", 1, "larch", 1), Map.of("elm", 0, "pine", 0));
        assertThat(table).isEqualTo(GradeTable.of(new long[][] {{1, 0}, {1, 0}}));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.49, 1, -1, Double.NaN})
    void whatIsNoConfidenceIsRefused(double confidence) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedKappa.of(COHEN, new Weighting.Linear(), confidence))
                .withMessageContaining(String.valueOf(confidence));
    }

    @Test
    void tablesThatCannotBeAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradeTable.of(new long[][] {{1, 2}}))
                .withMessageContaining("expected 1 counts");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradeTable.of(new long[][] {{-1}}))
                .withMessageContaining("-1");
        assertThatIllegalArgumentException().isThrownBy(() -> GradeTable.of(new long[0][0]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradeTable.ofLists(0, List.of(), List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradeTable.ofLists(3, List.of(3), List.of(0)))
                .withMessageContaining("between 0 and 2, found 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradeTable.ofLists(3, List.of(0), List.of(-1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GradeTable.ofLists(3, List.of(0), List.of()))
                .withMessageContaining("1 and 0");
    }

    @Test
    void weightsThatCannotBeAreRefused() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> given(0, bad, 1, 0))
                    .withMessageContaining(String.valueOf(bad));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> given(1, 1, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> given(0, 0, 0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Weighting.Given(List.of(List.of(0.0, 1.0))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedKappa.of(COHEN, given(0, 1, 1, 0), 0.95))
                .withMessageContaining("3 grades, found 2");
    }

    private static Weighting given(double a, double b, double c, double d) {
        return new Weighting.Given(List.of(List.of(a, b), List.of(c, d)));
    }

    private static WeightedKappa kappa(GradeTable table, Weighting weighting) {
        return WeightedKappa.of(table, weighting, 0.95).find().orElseThrow();
    }

    private static String because(GradeTable table, Weighting weighting) {
        return ((Answer.NotAvailable<WeightedKappa>) WeightedKappa.of(table, weighting, 0.95))
                .because();
    }

    private static List<String> remarks(GradeTable table) {
        return ((Answer.Available<WeightedKappa>)
                        WeightedKappa.of(table, new Weighting.Linear(), 0.95))
                .remarks();
    }
}
