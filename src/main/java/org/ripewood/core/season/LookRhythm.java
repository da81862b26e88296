package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How often something on a tree has to be looked at: oftener while wood grows than at rest.
 *
 * <p>Each day of growth uses up 1/{@code everyDaysInGrowth} of the time to the next look and each
 * day at rest 1/{@code everyDaysAtRest}; a look is due when nothing is left. A look late in winter
 * is therefore followed sooner when buds swell meanwhile. At rest is from half the leaves' fall
 * (stage 95) until buds swell (stage 01); trees that never rest are looked at as in growth. Common
 * practice, no source; the usual 14 and 42 days for wire are too.
 *
 * @param everyDaysInGrowth days from look to look; 0 when there is nothing to look at in growth
 * @param everyDaysAtRest days from look to look; 0 when there is nothing to look at at rest
 */
public record LookRhythm(int everyDaysInGrowth, int everyDaysAtRest) {

    /** Days from the one on which a look is due to the last on which it is in time. */
    static final int IN_TIME_DAYS = 6;

    private static final StageRange REST = new StageRange(95, 0);

    /** Longer than a year of rest between two days of growth. */
    private static final int LOOK_AHEAD_DAYS = 1000;

    public LookRhythm {
        if (everyDaysInGrowth < 0 || everyDaysAtRest < 0) {
            throw new IllegalArgumentException(
                    "looks are days apart, found %d in growth, %d at rest"
                            .formatted(everyDaysInGrowth, everyDaysAtRest));
        }
        if (everyDaysInGrowth == 0 && everyDaysAtRest == 0) {
            throw new IllegalArgumentException("looks need a rhythm in growth or at rest");
        }
    }

    /**
     * The day the next look is due.
     *
     * @param looked day of the last look, or of what the rhythm begins with
     * @param stages of the tree at its place
     * @return empty when it is not due within 1000 days
     */
    public Optional<LocalDate> next(LocalDate looked, StageClock stages) {
        long whole = (long) Math.max(1, everyDaysInGrowth) * Math.max(1, everyDaysAtRest);
        long used = 0;
        for (int days = 1; days <= LOOK_AHEAD_DAYS; days++) {
            var day = looked.plusDays(days);
            int every = REST.holds(stages.stageOn(day)) ? everyDaysAtRest : everyDaysInGrowth;
            used += every == 0 ? 0 : whole / every;
            if (used >= whole) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    /**
     * The days on which the next look is in time: the day it is due and six more.
     *
     * @param within the days of the care, after which nobody has to look any more
     * @param looked day of the last look, or the first day of the care
     * @return empty when the care ends before
     */
    public Optional<Span> nextWithin(Span within, LocalDate looked, StageClock stages) {
        return next(looked, stages)
                .filter(due -> !due.isAfter(within.to()))
                .map(due -> new Span(due, earlier(due.plusDays(IN_TIME_DAYS), within.to())));
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }
}
