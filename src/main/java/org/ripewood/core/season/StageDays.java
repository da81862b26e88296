package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Growing days by growth stage: those from bud swelling to the fall of leaves, stages 01 to 94, as
 * {@link GrowthTime} counts them but whatever the length of the day.
 *
 * <p>Sums are kept for a span, so that counting within it takes no time; outside it days are asked
 * for one by one. Threads may share it.
 */
public final class StageDays implements GrowingDays {

    private static final StageRange GROWS = new StageRange(1, 94);

    private final StageClock clock;
    private final LocalDate first;

    /** Entry i: growing days among the first i days of the span. */
    private final int[] sums;

    /** Without a span. */
    public StageDays(StageClock clock) {
        this(clock, LocalDate.EPOCH, new int[1]);
    }

    private StageDays(StageClock clock, LocalDate first, int[] sums) {
        this.clock = clock;
        this.first = first;
        this.sums = sums;
    }

    /**
     * With sums kept over a span.
     *
     * @param last not before the first day
     */
    public static StageDays over(StageClock clock, LocalDate first, LocalDate last) {
        var sums = new int[(int) ChronoUnit.DAYS.between(first, last) + 2];
        for (int i = 1; i < sums.length; i++) {
            sums[i] = sums[i - 1] + (GROWS.holds(clock.stageOn(first.plusDays(i - 1L))) ? 1 : 0);
        }
        return new StageDays(clock, first, sums);
    }

    @Override
    public boolean grows(LocalDate day) {
        return GROWS.holds(clock.stageOn(day));
    }

    @Override
    public long between(LocalDate from, LocalDate to) {
        if (!to.isAfter(from)) {
            return 0;
        }
        long begin = ChronoUnit.DAYS.between(first, from);
        long end = ChronoUnit.DAYS.between(first, to);
        if (begin >= 0 && end < sums.length) {
            return (long) sums[(int) end] - sums[(int) begin];
        }
        return from.datesUntil(to).filter(this::grows).count();
    }

    @Override
    public LocalDate lastWithin(LocalDate from, long days) {
        long left = days;
        var day = from;
        var reach = from.plusDays(days + NOTHING_GROWS_DAYS);
        while (day.isBefore(reach)) {
            if (grows(day)) {
                if (left == 0) {
                    return day;
                }
                left--;
            }
            day = day.plusDays(1);
        }
        return day;
    }
}
