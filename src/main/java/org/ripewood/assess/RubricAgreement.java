package org.ripewood.assess;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.agreement.Answer;
import org.ripewood.core.agreement.IntraclassCorrelation;
import org.ripewood.core.agreement.MeanKappa;
import org.ripewood.core.agreement.WeightedKappa;

/**
 * How far the judges agree who used a rubric.
 *
 * @param rubric its code
 * @param judgements how many were compared
 * @param shared occasions on which two judges or more looked at the same
 * @param overall over all pairs of judges, each with the weight of what both judged
 */
public record RubricAgreement(
        String rubric, int judgements, int shared, Answer<MeanKappa> overall, List<Pair> pairs) {

    public RubricAgreement {
        pairs = List.copyOf(pairs);
    }

    /**
     * Two judges.
     *
     * @param kappa weighted by the square of the distance between levels
     * @param correlation of the values the levels stand for; null where the rubric feeds no number
     */
    public record Pair(
            long oneId,
            long otherId,
            Answer<WeightedKappa> kappa,
            @Nullable Answer<IntraclassCorrelation> correlation) {}
}
