package org.ripewood.core.growth;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ripewood.core.season.GrowthDays;

/** What the readings of one wound say of how far the years differed in which it closed. */
public final class YearEvidence {

    /** With fewer looks a wound says nothing of its years. */
    private static final int LEAST_LOOKS = 4;

    private final Readings readings;
    private final ClosurePrior prior;
    private final Set<Integer> years;

    private YearEvidence(Readings readings, ClosurePrior prior, Set<Integer> years) {
        this.readings = readings;
        this.prior = prior;
        this.years = years;
    }

    /**
     * Of a wound that closed.
     *
     * <p>Edge cases: empty with fewer than four looks before it was closed, when it opened again on
     * the way, and where nothing grows.
     *
     * @param kind what is believed of its kind
     */
    public static Optional<YearEvidence> of(Closure closure, RateBelief kind, GrowthDays days) {
        var looks = closure.looks().stream().filter(look -> look.openMm() > 0).toList();
        if (looks.size() < LEAST_LOOKS
                || closure.sinceReopened().size() < closure.looks().size()
                || !(days.meanPerYear() > 0)) {
            return Optional.empty();
        }
        var prior = ClosurePriors.prior(ClosingBelief.of(kind), null, null, days);
        var years =
                IntStream.rangeClosed(
                                looks.get(0).on().getYear(),
                                looks.get(looks.size() - 1).on().getYear())
                        .boxed()
                        .collect(Collectors.toSet());
        return Optional.of(
                new YearEvidence(
                        ClosureModel.inOrder(ClosureForecast.readings(looks, days), prior),
                        prior,
                        years));
    }

    Set<Integer> years() {
        return years;
    }

    /** Logarithm of how well years that differ by this share explain the readings. */
    double logEvidence(double share) {
        var seasons = prior.in(YearSpread.exactly(share)).seasons();
        return SteadyRate.logEvidence(readings, seasons, prior.lags());
    }
}
