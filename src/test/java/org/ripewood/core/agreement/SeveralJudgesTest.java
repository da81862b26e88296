package org.ripewood.core.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("fast")
class SeveralJudgesTest {

    /** Ten things, fourteen judges, five grades: the standard example (data from memory). */
    private static final List<List<Integer>> FOURTEEN_JUDGES =
            List.of(
                    List.of(0, 0, 0, 0, 14),
                    List.of(0, 2, 6, 4, 2),
                    List.of(0, 0, 3, 5, 6),
                    List.of(0, 3, 9, 2, 0),
                    List.of(2, 2, 8, 1, 1),
                    List.of(7, 7, 0, 0, 0),
                    List.of(3, 2, 6, 3, 0),
                    List.of(2, 5, 3, 2, 2),
                    List.of(6, 5, 2, 1, 0),
                    List.of(0, 2, 2, 3, 7));

    /** Usually printed 0.210; six places worked by a second program. */
    @Test
    void fourteenJudgesAgreeAsPublished() {
        var kappa = FleissKappa.of(FOURTEEN_JUDGES).find().orElseThrow();
        assertThat(kappa.value()).isCloseTo(0.210, within(5e-4));
        assertThat(kappa.value()).isCloseTo(0.209931, within(5e-7));
        assertThat(kappa.observedAgreement()).isCloseTo(0.378022, within(5e-7));
        assertThat(kappa.expectedAgreement()).isCloseTo(0.212755, within(5e-7));
        assertThat(kappa.judges()).isEqualTo(14);
        assertThat(kappa.band()).isEqualTo(AgreementBand.FAIR);
    }

    @Test
    void judgesWhoAllSayTheSameAgreeFully() {
        var kappa = FleissKappa.of(List.of(List.of(3, 0), List.of(0, 3))).find().orElseThrow();
        assertThat(kappa.value()).isEqualTo(1);
    }

    @Test
    void whatFleissCannotTellSaysWhy() {
        assertThat(because(FleissKappa.of(List.of()))).contains("nothing was judged");
        assertThat(because(FleissKappa.of(List.of(List.of(1, 0))))).contains("two judges, found 1");
        assertThat(because(FleissKappa.of(List.of(List.of(2, 0), List.of(2, 1)))))
                .contains("expected 2 judges, found 3 in row 2");
        assertThat(because(FleissKappa.of(List.of(List.of(0, 2), List.of(0, 2)))))
                .contains("one grade only");
    }

    @Test
    void countsThatCannotBeAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FleissKappa.of(List.of(List.of(2, 0), List.of(2))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FleissKappa.of(List.of(List.of(3, -1))))
                .withMessageContaining("none negative, found [3, -1]");
    }

    /**
     * For two judges Fleiss' kappa is Cohen's of the table made symmetric (Fleiss 1971: Scott's π).
     */
    @Test
    void forTwoJudgesFleissIsCohenOfTheTableBothWaysRound() {
        long seed = 711_378;
        var dice = new SplittableRandom(seed);
        for (int round = 0; round < 200; round++) {
            var counts = new ArrayList<List<Integer>>();
            var table = new long[4][4];
            for (int i = 0; i < 25; i++) {
                int one = dice.nextInt(4);
                int other = dice.nextInt(3) == 0 ? dice.nextInt(4) : one;
                var row = new ArrayList<>(List.of(0, 0, 0, 0));
                row.set(one, row.get(one) + 1);
                row.set(other, row.get(other) + 1);
                counts.add(row);
                table[one][other]++;
                table[other][one]++;
            }
            var cohen =
                    WeightedKappa.of(GradeTable.of(table), new Weighting.Unweighted(), 0.95)
                            .find()
                            .orElseThrow();
            assertThat(FleissKappa.of(counts).find().orElseThrow().value())
                    .as("seed %d, round %d", seed, round)
                    .isCloseTo(cohen.value(), within(1e-12));
        }
    }

    /**
     * By hand, unweighted: ann and ben 1 of four pairs; ann and cem agree on 2 of 2 ⇒ 1; ben and
     * cem have nothing in common. Ann and ben: grades 0011 against 0111, D 1/4, E 1/2, κ 1/2; mean
     * (4 · 1/2 + 2 · 1) / 6 = 2/3.
     */
    @Test
    void theMeanWeighsPairsOfJudgesByWhatBothJudged() {
        var byJudge = new LinkedHashMap<String, Map<String, Integer>>();
        byJudge.put("ann", Map.of("a", 0, "b", 0, "c", 1, "d", 1, "e", 0, "f", 1));
        byJudge.put("ben", Map.of("a", 0, "b", 1, "c", 1, "d", 1));
        byJudge.put("cem", Map.of("e", 0, "f", 1));
        var pairs = PairwiseKappa.ofAll(2, byJudge, new Weighting.Unweighted(), 0.95);
        assertThat(pairs)
                .extracting(pair -> pair.one() + " " + pair.other())
                .containsExactly("ann ben", "ann cem", "ben cem");
        assertThat(pairs.get(0).kappa().find().orElseThrow().value()).isCloseTo(0.5, within(1e-12));
        assertThat(pairs.get(2).kappa()).isInstanceOf(Answer.NotAvailable.class);
        var mean = (Answer.Available<MeanKappa>) MeanKappa.of(pairs);
        assertThat(mean.value().value()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(mean.value().pairs()).isEqualTo(6);
        assertThat(mean.value().pairsOfJudges()).isEqualTo(2);
        assertThat(mean.remarks()).hasSize(2).anyMatch(remark -> remark.contains("1 of 3 pairs"));
    }

    @Test
    void aMeanOfNothingSaysWhy() {
        Map<String, Map<String, Integer>> alone = Map.of("ann", Map.of("a", 1));
        var none = PairwiseKappa.ofAll(2, alone, new Weighting.Linear(), 0.95);
        assertThat(because(MeanKappa.of(none))).contains("takes two judges");
        var strangers =
                PairwiseKappa.ofAll(
                        2,
                        Map.of("ann", Map.of("a", 1), "ben", Map.of("b", 1)),
                        new Weighting.Linear(),
                        0.95);
        assertThat(because(MeanKappa.of(strangers))).contains("of 1 pairs of judges");
    }

    @Test
    void kappasOfDifferentWeightingsHaveNoMean() {
        var byJudge = Map.of("ann", Map.of("a", 0, "b", 1), "ben", Map.of("a", 0, "b", 1));
        var mixed = new ArrayList<>(PairwiseKappa.ofAll(2, byJudge, new Weighting.Linear(), 0.95));
        mixed.addAll(PairwiseKappa.ofAll(2, byJudge, new Weighting.Quadratic(), 0.95));
        assertThatIllegalArgumentException().isThrownBy(() -> MeanKappa.of(mixed));
    }

    private static <T> String because(Answer<T> answer) {
        return ((Answer.NotAvailable<T>) answer).because();
    }
}
