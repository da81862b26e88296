package org.ripewood.core.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Every day of the calendar counts as one. */
enum PlainDays implements GrowthDays {
    EVERYWHERE;

    /** Nothing is looked for farther away; also keeps the day within what a date can hold. */
    private static final double REACH_DAYS = 200 * PLAIN_DAYS_PER_YEAR;

    @Override
    public double between(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to);
    }

    @Override
    public Optional<LocalDate> dayReaching(LocalDate from, double amount) {
        if (Double.isNaN(amount)) {
            throw new IllegalArgumentException("an amount of growth-time must be a number");
        }
        if (amount > REACH_DAYS) {
            return Optional.empty();
        }
        return Optional.of(from.plusDays((long) Math.ceil(Math.max(0, amount))));
    }

    @Override
    public double meanPerYear() {
        return PLAIN_DAYS_PER_YEAR;
    }
}
