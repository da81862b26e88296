package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.SplittableRandom;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/**
 * Forecasts of trunks that thickened in another way than the model believes, read once a year.
 *
 * @param end the size the trunk grows towards, in times of the diameter asked for; 0 for no end
 */
record ThickeningTrials(Trunks mechanism, double end, double yearSd) {

    private static final LocalDate FIRST = LocalDate.of(2010, 3, 1);
    private static final double STEP_YEARS = 0.02;

    Coverage coverage(int readings, int trunks, long seed) {
        var dice = new SplittableRandom(seed);
        var coverage = new Coverage();
        while (coverage.seen() < trunks) {
            double first = dice.nextDouble(15, 60);
            double gain = Math.max(1, Math.min(7, 3.2 * Math.exp(0.5 * dice.nextGaussian())));
            int span = readings - 1;
            double target = (first + gain * Math.max(1, span)) * dice.nextDouble(1.1, 1.4);
            var tree = new Trunks.Tree(first, gain, end * target);
            var seasons = Trunks.seasons(span + Outlook.REACH_YEARS + 5, yearSd, dice);
            follow(tree, seasons, span, target, coverage, dice);
        }
        return coverage;
    }

    private void follow(
            Trunks.Tree tree,
            double[] seasons,
            int span,
            double target,
            Coverage coverage,
            SplittableRandom dice) {
        var read = new ArrayList<Thickening.Reading>();
        for (int year = 0; year <= span; year++) {
            double seen = diameter(tree, seasons, year) + Trunks.ERROR_MM * dice.nextGaussian();
            read.add(new Thickening.Reading(day(year), Math.max(0, seen)));
        }
        var today = day(span);
        var outlook =
                Thickening.of(read, Thickening.IN_TRAINING, GrowthDays.plain())
                        .whenAtLeast(target, today);
        if (target > diameter(tree, seasons, span) + 2 && !(outlook instanceof Outlook.Already)) {
            double years = span;
            double last = span + Outlook.REACH_YEARS + 1;
            while (years < last && diameter(tree, seasons, years) < target) {
                years += STEP_YEARS;
            }
            coverage.add(outlook, day(years), today);
        }
    }

    private double diameter(Trunks.Tree tree, double[] seasons, double years) {
        return mechanism.diameterMm(tree, Trunks.gone(seasons, years));
    }

    private static LocalDate day(double years) {
        return FIRST.plusDays(Math.round(years * 365.25));
    }
}
