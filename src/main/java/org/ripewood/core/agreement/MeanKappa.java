package org.ripewood.core.agreement;

import java.util.ArrayList;
import java.util.List;

/**
 * How far several judges agree, two by two.
 *
 * @param value at most 1
 * @param pairs of grades that went into it, over all pairs of judges
 * @param pairsOfJudges whose kappa went into it
 */
public record MeanKappa(double value, long pairs, int pairsOfJudges) {

    /**
     * @throws IllegalArgumentException when a number is out of its range
     */
    public MeanKappa {
        if (!(value <= 1 && Double.isFinite(value) && pairs > 0 && pairsOfJudges > 0)) {
            throw new IllegalArgumentException(
                    "no mean kappa: %s of %d pairs, %d of judges"
                            .formatted(value, pairs, pairsOfJudges));
        }
    }

    /**
     * The mean of the kappas of pairs of judges, each with the weight of what the two both judged.
     *
     * <p>Formula: {@code Σ n κ / Σ n}. Edge cases: pairs of judges without a kappa are left out,
     * with a remark; none with one, not available. Limits: no standard error, because a judge is in
     * several pairs and these do not vary by themselves. Source: the mean of pairs is Light 1971,
     * Psychol. Bull. 76:365-377 (from memory); the weights are our own.
     *
     * @param kappas all of one weighting
     * @throws IllegalArgumentException when the weightings differ
     */
    public static <J> Answer<MeanKappa> of(List<PairwiseKappa<J>> kappas) {
        var there = kappas.stream().flatMap(pair -> pair.kappa().find().stream()).toList();
        if (there.stream().map(WeightedKappa::weighting).distinct().count() > 1) {
            throw new IllegalArgumentException("expected one weighting, found several");
        }
        if (there.isEmpty()) {
            return new Answer.NotAvailable<>(
                    kappas.isEmpty()
                            ? "it takes two judges."
                            : "no two judges have a kappa, of %d pairs of judges."
                                    .formatted(kappas.size()));
        }
        long pairs = there.stream().mapToLong(WeightedKappa::pairs).sum();
        double sum = there.stream().mapToDouble(kappa -> kappa.pairs() * kappa.value()).sum();
        var remarks = new ArrayList<String>(Remarks.onFew(pairs));
        if (there.size() < kappas.size()) {
            remarks.add(
                    "Left out: %d of %d pairs of judges, because they have no kappa."
                            .formatted(kappas.size() - there.size(), kappas.size()));
        }
        return new Answer.Available<>(
                new MeanKappa(Math.min(1, sum / pairs), pairs, there.size()), remarks);
    }
}
