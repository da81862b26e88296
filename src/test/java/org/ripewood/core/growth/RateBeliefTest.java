package org.ripewood.core.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.ripewood.core.season.GrowthDays;

@Tag("fast")
class RateBeliefTest {

    /**
     * Hoff 2009, A First Course in Bayesian Statistical Methods, ch. 5: wing lengths of nine
     * midges, prior mean 1.9 and variance 0.010 on one observation each; posterior mean 1.814 and
     * variance 0.015 (as printed, from memory).
     */
    @Test
    void itLearnsAsTheTextbookDoes() {
        var prior = new RateBelief(1.9, 1, 1.0000001 * 0.5 + 1, 0.5 * 0.010);
        var learnt = prior.learn(List.of(1.64, 1.70, 1.72, 1.74, 1.82, 1.82, 1.82, 1.90, 2.08));
        assertThat(learnt.meanMm()).isCloseTo(1.814, within(0.0005));
        assertThat(learnt.weight()).isEqualTo(10);
        // The book's nu_n sigma_n^2 / 2 is the scale: 10 * 0.015 / 2.
        assertThat(learnt.scale() * 2 / 10).isCloseTo(0.015, within(0.0005));
    }

    @Test
    void aFirstBeliefExpectsTheNextTreeWhereItWasTold() {
        var belief = RateBelief.of(3.5, 1.4);
        assertThat(belief.meanMm()).isEqualTo(3.5);
        assertThat(belief.sdMm()).isCloseTo(1.4, within(1e-12));
    }

    @Test
    void atOnceOrOneByOneIsTheSame() {
        var belief = RateBelief.of(3.5, 1.4);
        var once = belief.learn(List.of(2.0, 4.5, 3.1));
        var oneByOne = belief.learn(List.of(3.1)).learn(List.of(2.0)).learn(List.of(4.5));
        assertThat(oneByOne.meanMm()).isCloseTo(once.meanMm(), within(1e-12));
        assertThat(oneByOne.scale()).isCloseTo(once.scale(), within(1e-12));
    }

    @Test
    void muchSeenOutweighsTheFirstBelief() {
        var learnt =
                RateBelief.of(3.5, 1.4)
                        .learn(
                                Stream.iterate(0, i -> i + 1)
                                        .limit(400)
                                        .map(i -> i % 2 + 5.5)
                                        .toList());
        assertThat(learnt.meanMm()).isCloseTo(6, within(0.05));
        assertThat(learnt.sdMm()).isCloseTo(0.5, within(0.1));
    }

    @Test
    void whatIsNoRateIsRefused() {
        var belief = RateBelief.of(3.5, 1.4);
        assertThat(belief.learn(List.of())).isEqualTo(belief);
        assertThatIllegalArgumentException().isThrownBy(() -> belief.learn(List.of(Double.NaN)));
        assertThatIllegalArgumentException().isThrownBy(() -> RateBelief.of(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> RateBelief.of(3, 0));
    }

    /** 20 mm gone at 2 mm a year and lip take 5 years after the lag, whatever the vigour shows. */
    @Test
    void aClosedWoundTellsItsRate() {
        var days = GrowthDays.plain();
        var made = LocalDate.of(2010, 1, 1);
        var looks =
                Stream.of(1.0, 2.0, 4.0, 5.5)
                        .map(
                                years ->
                                        new Closure.Look(
                                                made.plusDays(Math.round(years * 365.25)),
                                                Math.max(
                                                        0,
                                                        20
                                                                - 4
                                                                        * (years
                                                                                - ClosurePriors
                                                                                        .LAG_SHARE))))
                        .toList();
        var wound = Closure.of(made, 20, looks);
        assertThat(ClosurePriors.rateOf(wound, 75, days).orElseThrow()).isCloseTo(2, within(0.02));
        assertThat(ClosurePriors.rateOf(wound, 37.5, days).orElseThrow())
                .isCloseTo(4, within(0.04));
    }

    @Test
    void oneLookThatFoundItClosedTellsTheMiddleOfTheTimeBetween() {
        var made = LocalDate.of(2010, 1, 1);
        var shut = Closure.of(made, 10, List.of(new Closure.Look(made.plusDays(731), 0)));
        double halfway = (2.0 - ClosurePriors.LAG_SHARE) / 2;
        assertThat(ClosurePriors.rateOf(shut, 75, GrowthDays.plain()).orElseThrow())
                .isCloseTo(5 / halfway, within(0.02));
    }

    @Test
    void anOpenWoundOrOneThatReopenedTeachesNothing() {
        var made = LocalDate.of(2010, 1, 1);
        var days = GrowthDays.plain();
        assertThat(ClosurePriors.rateOf(Closure.of(made, 10, List.of()), 75, days)).isEmpty();
        var torn =
                Closure.of(
                        made,
                        10,
                        List.of(
                                new Closure.Look(made.plusDays(300), 14),
                                new Closure.Look(made.plusDays(900), 0)));
        assertThat(ClosurePriors.rateOf(torn, 75, days)).isEmpty();
        assertThat(ClosurePriors.rateOf(Closure.of(made, 0, List.of()), 75, days)).isEmpty();
    }
}
