package org.ripewood.core.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Wounds that close in ways the model does not know of. Their numbers are their own and shared with
 * nothing in the model: seasons from day 95 to day 305 of the year, years that differ by what a
 * test asks for, 30 to 120 days before a lip moves, trees of a kind that differ by four tenths,
 * readings off by half a millimetre.
 */
sealed interface Wounds {

    LocalDate FIRST_CUT = LocalDate.of(2001, 1, 1);
    double ERROR_MM = 0.5;

    /** The opening day by day from the cut on. */
    double[] openings(Cut cut, SplittableRandom dice);

    /**
     * A cut to be followed.
     *
     * @param paceMm what trees of its kind close in a mean year, both lips
     * @param yearSd standard deviation of a year's share about 1
     * @param stillFromDay day from which on it stands still; beyond the last for never
     */
    record Cut(
            LocalDate on,
            double widthMm,
            double paceMm,
            double yearSd,
            int stillFromDay,
            int days) {

        /** Share of a year's growth that falls on a day; a sine over the season. */
        double share(int day) {
            int ofYear = on.plusDays(day).getDayOfYear();
            return ofYear < 95 || ofYear > 305
                    ? 0
                    : Math.PI / 2 / 210 * Math.sin(Math.PI * (ofYear - 95) / 210);
        }

        int year(int day) {
            return on.plusDays(day).getYear() - on.getYear();
        }
    }

    /**
     * Every year has a share of its own, independent of the last, drawn from a gamma distribution;
     * the tree's pace from a lognormal one. The lag counts days of the season.
     */
    record YearByYear() implements Wounds {

        @Override
        public double[] openings(Cut cut, SplittableRandom dice) {
            double pace = cut.paceMm() * Math.exp(0.4 * dice.nextGaussian() - 0.08);
            int lag = dice.nextInt(30, 121);
            var years = new double[cut.days() / 365 + 2];
            for (int i = 0; i < years.length; i++) {
                years[i] = cut.yearSd() > 0 ? gamma(dice, 1 / (cut.yearSd() * cut.yearSd())) : 1;
            }
            var open = new double[cut.days()];
            double now = cut.widthMm();
            for (int day = 0; day < open.length; day++) {
                open[day] = Math.max(0, now);
                double share = cut.share(day);
                lag -= share > 0 ? 1 : 0;
                if (lag < 0 && day < cut.stillFromDay()) {
                    now -= pace * share * years[cut.year(day)];
                }
            }
            return open;
        }
    }

    /**
     * Growth comes week by week in uneven pushes, good and bad years follow each other (three
     * tenths of a year's straying goes on into the next, on a logarithmic scale), and each lip has
     * a pace of its own about the tree's, which is drawn from a gamma distribution. The lag counts
     * days of the calendar.
     */
    record WeekByWeek() implements Wounds {

        @Override
        public double[] openings(Cut cut, SplittableRandom dice) {
            double tree = cut.paceMm() * gamma(dice, 7);
            double[] lips = {tree / 2 * gamma(dice, 60), tree / 2 * gamma(dice, 60)};
            int lag = dice.nextInt(30, 121);
            double logSd = Math.sqrt(Math.log(1 + cut.yearSd() * cut.yearSd()));
            double straying = logSd * dice.nextGaussian();
            double push = 1;
            var open = new double[cut.days()];
            double now = cut.widthMm();
            for (int day = 0; day < open.length; day++) {
                open[day] = Math.max(0, now);
                if (day > 0 && cut.year(day) > cut.year(day - 1)) {
                    straying = 0.3 * straying + Math.sqrt(0.91) * logSd * dice.nextGaussian();
                }
                push = day % 7 == 0 ? gamma(dice, 10) : push;
                if (day >= lag && day < cut.stillFromDay()) {
                    double year = Math.exp(straying - logSd * logSd / 2);
                    now -= (lips[0] + lips[1]) * cut.share(day) * year * push;
                }
            }
            return open;
        }
    }

    /** Looks at a wound twice a year, in spring and in autumn, each off by an error. */
    static Closure read(Cut cut, double[] openings, int readings, SplittableRandom dice) {
        var looks = new ArrayList<Closure.Look>();
        for (int i = 1; i <= readings; i++) {
            int day = lookDay(i) + (i == 0 ? 0 : dice.nextInt(-15, 16));
            looks.add(look(cut, openings, day, dice));
        }
        var first = look(cut, openings, 0, dice);
        return Closure.of(cut.on(), first.openMm(), List.copyOf(looks));
    }

    static int lookDay(int reading) {
        return (int) Math.round(182.6 * reading);
    }

    private static Closure.Look look(Cut cut, double[] open, int day, SplittableRandom dice) {
        // Lips that have met are seen to have met.
        double seen = open[day] == 0 ? 0 : open[day] + ERROR_MM * dice.nextGaussian();
        return new Closure.Look(cut.on().plusDays(day), Math.max(0, seen));
    }

    /** The first day it is at most so wide; beyond the last when it never is. */
    static int dayAtMost(double[] openings, double mm) {
        for (int day = 0; day < openings.length; day++) {
            if (openings[day] <= mm) {
                return day;
            }
        }
        return openings.length;
    }

    /** Mean 1, shape as told: Marsaglia and Tsang 2000, ACM Trans. Math. Softw. 26:363-372. */
    static double gamma(SplittableRandom dice, double shape) {
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double z = dice.nextGaussian();
            double v = Math.pow(1 + c * z, 3);
            if (v > 0 && Math.log(dice.nextDouble()) < z * z / 2 + d - d * v + d * Math.log(v)) {
                return d * v / shape;
            }
        }
    }
}
