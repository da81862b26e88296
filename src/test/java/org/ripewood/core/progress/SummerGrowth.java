package org.ripewood.core.progress;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.ripewood.core.season.GrowthDays;

/**
 * A place where a tree grows by 10 a day from 1 April to 30 September, 183 days, and not at all
 * else: simple enough to reckon by hand. South of the equator the same half a year later.
 */
record SummerGrowth(boolean south) implements GrowthDays {

    static final GrowthDays NORTH = new SummerGrowth(false);
    static final GrowthDays SOUTH = new SummerGrowth(true);

    /** Nothing ever grows here. */
    static final GrowthDays POLE =
            new GrowthDays() {
                @Override
                public double between(LocalDate from, LocalDate to) {
                    return 0;
                }

                @Override
                public Optional<LocalDate> dayReaching(LocalDate from, double amount) {
                    return amount <= 0 ? Optional.of(from) : Optional.empty();
                }

                @Override
                public double meanPerYear() {
                    return 0;
                }
            };

    static final double PER_DAY = 10;
    static final double PER_YEAR = 183 * PER_DAY;

    @Override
    public double between(LocalDate from, LocalDate to) {
        return PER_DAY * (grownBy(to) - grownBy(from));
    }

    /** Growing days before the morning of a day, since year 0. */
    private long grownBy(LocalDate day) {
        var moved = south ? day.minusMonths(6) : day;
        var begin = LocalDate.of(moved.getYear(), Month.APRIL, 1);
        long thisYear = Math.max(0, Math.min(183, ChronoUnit.DAYS.between(begin, moved)));
        return 183L * moved.getYear() + thisYear;
    }

    @Override
    public Optional<LocalDate> dayReaching(LocalDate from, double amount) {
        for (int ahead = 0; ahead < 30 * 366; ahead++) {
            var day = from.plusDays(ahead);
            if (between(from, day) >= amount) {
                return Optional.of(day);
            }
        }
        return Optional.empty();
    }

    @Override
    public double meanPerYear() {
        return PER_YEAR;
    }
}
