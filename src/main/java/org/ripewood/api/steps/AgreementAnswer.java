package org.ripewood.api.steps;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.assess.RubricAgreement;
import org.ripewood.core.agreement.Answer;
import org.ripewood.core.agreement.IntraclassCorrelation;
import org.ripewood.core.agreement.MeanKappa;
import org.ripewood.core.agreement.WeightedKappa;

/** How far judges agree by one rubric; a measure that is not available says why. */
record AgreementAnswer(
        String rubric, int judgements, int shared, Measure overall, List<Pair> pairs) {

    /**
     * A measure.
     *
     * @param value at most 1; null when not available
     * @param band the usual word for a kappa
     * @param lower end of the interval
     * @param compared how many things both judged
     * @param because why there is no value
     */
    record Measure(
            @Nullable Double value,
            @Nullable String band,
            @Nullable Double lower,
            @Nullable Double upper,
            @Nullable Double confidence,
            @Nullable Long compared,
            List<String> remarks,
            @Nullable String because) {}

    /**
     * Two judges.
     *
     * @param kappa with quadratic weights
     * @param correlation form (2,1) of Shrout and Fleiss; null where the rubric feeds no number
     */
    record Pair(long oneId, long otherId, Measure kappa, @Nullable Measure correlation) {}

    static AgreementAnswer of(RubricAgreement agreement) {
        return new AgreementAnswer(
                agreement.rubric(),
                agreement.judgements(),
                agreement.shared(),
                mean(agreement.overall()),
                agreement.pairs().stream().map(AgreementAnswer::of).toList());
    }

    private static Pair of(RubricAgreement.Pair pair) {
        var correlation = pair.correlation();
        return new Pair(
                pair.oneId(),
                pair.otherId(),
                kappa(pair.kappa()),
                correlation == null ? null : correlation(correlation));
    }

    private static Measure mean(Answer<MeanKappa> answer) {
        if (answer instanceof Answer.Available<MeanKappa> there) {
            var mean = there.value();
            return new Measure(
                    mean.value(), null, null, null, null, mean.pairs(), there.remarks(), null);
        }
        return missing(answer);
    }

    private static Measure kappa(Answer<WeightedKappa> answer) {
        if (answer instanceof Answer.Available<WeightedKappa> there) {
            var kappa = there.value();
            return new Measure(
                    kappa.value(),
                    kappa.band().words(),
                    kappa.interval().lower(),
                    kappa.interval().upper(),
                    kappa.interval().confidence(),
                    kappa.pairs(),
                    there.remarks(),
                    null);
        }
        return missing(answer);
    }

    private static Measure correlation(Answer<IntraclassCorrelation> answer) {
        if (answer instanceof Answer.Available<IntraclassCorrelation> there) {
            var correlation = there.value();
            return new Measure(
                    correlation.value(),
                    null,
                    correlation.interval().lower(),
                    correlation.interval().upper(),
                    correlation.interval().confidence(),
                    null,
                    there.remarks(),
                    null);
        }
        return missing(answer);
    }

    private static Measure missing(Answer<?> answer) {
        var because = ((Answer.NotAvailable<?>) answer).because();
        return new Measure(null, null, null, null, null, null, List.of(), because);
    }
}
