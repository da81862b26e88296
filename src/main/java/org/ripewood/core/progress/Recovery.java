package org.ripewood.core.progress;

import java.time.LocalDate;
import org.ripewood.core.season.GrowthDays;

/**
 * How fast a tree recovers from work: by growth, not by the calendar.
 *
 * <p>A work's recovery days, told for a strong tree in a mean year, stand for that share of a
 * year's growth: {@code amount = recoveryDays / 365.25 × meanPerYear}. The share of its load still
 * there is {@code 1 − pace × growth gone by / amount}, not below 0. So nothing recovers in winter
 * rest, early summer counts for more than its days, and a year's recovery is over after a mean year
 * whenever it began. Where only days of the calendar are known it is a straight line over the
 * recovery days. Common practice, no source.
 *
 * @param time growth-time of the tree's kind at its place
 * @param pace 1 for a strong tree of a kind that recovers neither fast nor slowly; above 0
 */
public record Recovery(GrowthDays time, double pace) {

    /** How fast a kind of tree recovers from work, against the rest. Common practice, no source. */
    public enum Pace {
        SLOW(0.8),
        USUAL(1),
        FAST(1.2);

        private final double factor;

        Pace(double factor) {
            this.factor = factor;
        }

        /** By what the pace of recovery is multiplied. */
        double factor() {
            return factor;
        }
    }

    /** Days of the calendar at pace 1, for trees at places without temperatures. */
    public static final Recovery PLAIN = new Recovery(GrowthDays.plain(), 1);

    private static final double STRONG_VIGOUR = 75;
    private static final double LEAST_PACE = 1.0 / 3;
    private static final double MOST_PACE = 4.0 / 3;

    public Recovery {
        if (!(pace > 0 && pace < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a pace must lie above 0, found " + pace);
        }
    }

    /**
     * The recovery of a tree.
     *
     * <p>{@code pace = vigour / 75}, held between 1/3 (a tree of 25 or weaker) and 4/3 (100); times
     * the factor of the species' {@link Pace}. Common practice, no source.
     *
     * @param vigourIndex 0 to 100; NaN, not known, counts as strong, since load is then held
     *     against no budget anyway
     */
    public static Recovery of(GrowthDays time, double vigourIndex, Traits traits) {
        double byVigour =
                Double.isNaN(vigourIndex)
                        ? 1
                        : Math.max(LEAST_PACE, Math.min(MOST_PACE, vigourIndex / STRONG_VIGOUR));
        return new Recovery(time, byVigour * traits.recovery().factor());
    }

    /**
     * The share of a work's load that is left on a day not before it: 1 on the day itself, 0 at the
     * end; 0 for work that asks for no recovery, and always 1 where nothing grows.
     */
    double shareLeft(Work work, LocalDate on) {
        if (work.recoveryDays() == 0) {
            return 0;
        }
        double amount = amountFor(work);
        if (!(amount > 0)) {
            return 1;
        }
        double gone = pace * time.between(work.doneOn(), on) / amount;
        return Math.max(0, Math.min(1, 1 - gone));
    }

    /** Growth-time over which a work's load falls to nothing at pace 1. */
    double amountFor(Work work) {
        return work.recoveryDays() / GrowthDays.PLAIN_DAYS_PER_YEAR * time.meanPerYear();
    }
}
