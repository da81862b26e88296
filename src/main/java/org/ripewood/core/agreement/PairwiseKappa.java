package org.ripewood.core.agreement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The weighted kappa of two among several judges.
 *
 * @param <J> what names a judge
 */
public record PairwiseKappa<J>(J one, J other, Answer<WeightedKappa> kappa) {

    /**
     * The weighted kappas of all pairs of judges.
     *
     * <p>Formula: {@link WeightedKappa#of} on what the two both judged. Shapes: n judges give
     * n(n-1)/2 pairs, in the map's order. Edge cases: fewer than two judges, no pair; a pair
     * without a kappa stays in the list with its reason.
     *
     * @param <J> what names a judge
     * @param <T> what was judged
     * @param byJudge each judge's grades, 0 to one less than there are grades
     * @throws IllegalArgumentException as {@link WeightedKappa#of} and {@link
     *     GradeTable#ofJudgements}
     */
    public static <J, T> List<PairwiseKappa<J>> ofAll(
            int grades, Map<J, Map<T, Integer>> byJudge, Weighting weighting, double confidence) {
        var judges = List.copyOf(byJudge.entrySet());
        var pairs = new ArrayList<PairwiseKappa<J>>();
        for (int i = 0; i < judges.size(); i++) {
            for (int j = i + 1; j < judges.size(); j++) {
                var one = judges.get(i);
                var other = judges.get(j);
                var table = GradeTable.ofJudgements(grades, one.getValue(), other.getValue());
                pairs.add(
                        new PairwiseKappa<>(
                                one.getKey(),
                                other.getKey(),
                                WeightedKappa.of(table, weighting, confidence)));
            }
        }
        return List.copyOf(pairs);
    }
}
