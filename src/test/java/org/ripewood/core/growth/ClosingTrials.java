package org.ripewood.core.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ripewood.core.season.GrowthDays;

/**
 * Forecasts of wounds that closed in another way than the model believes. A kind's pace is believed
 * with the right mean, its trees to differ by four tenths.
 *
 * @param paceMm what the kind closes in a mean year, both lips
 * @param yearSd by how much years differ
 */
record ClosingTrials(Wounds mechanism, double paceMm, double yearSd, GrowthDays days) {

    private static final int YEARS = 45;
    private static final int NEVER = 365 * YEARS + 1;
    private static final double STILL_OPEN_MM = 6;

    RateBelief kind() {
        return RateBelief.of(paceMm / 2, 0.4 * paceMm / 2);
    }

    /** How forecasts of a closing to 5 mm did, made on the day of the last reading. */
    Coverage coverage(int readings, int wounds, YearSpread years, long seed) {
        var dice = new SplittableRandom(seed);
        var coverage = new Coverage();
        var belief = new ClosingBelief(kind(), years);
        while (coverage.seen() < wounds) {
            double span = readings / 2.0 + dice.nextDouble(0.7, 3);
            var cut = cut(dice, 5 + Math.max(5, paceMm * span), NEVER, 365 * YEARS);
            var openings = mechanism.openings(cut, dice);
            var closure = Wounds.read(cut, openings, readings, dice);
            var forecast = ClosureForecast.of(closure, belief, 75.0, null, days);
            if (closure.latest().openMm() > STILL_OPEN_MM && forecast.unsaid().isEmpty()) {
                var today = closure.latest().on();
                coverage.add(
                        forecast.whenAtMost(5, today),
                        cut.on().plusDays(Wounds.dayAtMost(openings, 5)),
                        today);
            }
        }
        return coverage;
    }

    /** What a school knows of its years that has read so many wounds until they closed. */
    YearSpread learnt(int wounds, long seed) {
        var dice = new SplittableRandom(seed);
        var evidence = new ArrayList<YearEvidence>();
        while (evidence.size() < wounds) {
            var cut = cut(dice, paceMm * dice.nextDouble(2.5, 5), NEVER, 365 * 12);
            var closure = Wounds.read(cut, mechanism.openings(cut, dice), 12, dice);
            YearEvidence.of(closure, kind(), days).ifPresent(evidence::add);
        }
        return YearSpread.UNKNOWN.learn(evidence);
    }

    /** Wounds that closed for one to two years and then stood still for so many half years. */
    Told standing(int halfYears, int wounds, long seed) {
        var dice = new SplittableRandom(seed);
        var closures = new ArrayList<Closure>();
        while (closures.size() < wounds) {
            int closing = dice.nextInt(2, 5);
            int from = Wounds.lookDay(closing);
            var cut = cut(dice, 12 + paceMm * closing / 2, from, 365 * 8);
            var openings = mechanism.openings(cut, dice);
            if (openings[from] > STILL_OPEN_MM) {
                closures.add(Wounds.read(cut, openings, closing + halfYears, dice));
            }
        }
        return told(closures);
    }

    /** Wounds that close all the time. */
    Told closing(int readings, int wounds, long seed) {
        var dice = new SplittableRandom(seed);
        var closures = new ArrayList<Closure>();
        while (closures.size() < wounds) {
            double width = 8 + paceMm * (readings / 2.0 + dice.nextDouble(0, 2));
            var cut = cut(dice, width, NEVER, 365 * 8);
            var closure = Wounds.read(cut, mechanism.openings(cut, dice), readings, dice);
            if (closure.latest().openMm() > STILL_OPEN_MM) {
                closures.add(closure);
            }
        }
        return told(closures);
    }

    /** Shares told to stand still, and to have opened again. */
    record Told(double still, double opened) {}

    private Told told(List<Closure> closures) {
        var belief = ClosingBelief.of(kind());
        long opened = closures.stream().filter(Closure::reopened).count();
        long still =
                closures.stream()
                        .filter(one -> !one.reopened() && one.stalled(belief, days))
                        .count();
        return new Told((double) still / closures.size(), (double) opened / closures.size());
    }

    private Wounds.Cut cut(SplittableRandom dice, double widthMm, int stillFrom, int days) {
        var on = Wounds.FIRST_CUT.plusDays(dice.nextInt(0, 3650));
        return new Wounds.Cut(on, widthMm, paceMm, yearSd, stillFrom, days);
    }
}
