package org.ripewood.core.season;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Growth-time of one kind of tree at one place: what has gone by between two days, and the way
 * back.
 *
 * <p>Its unit is the degree-day of a day that counts for growth; rest in winter adds nothing. Where
 * a place's temperatures are not known, {@link #plain()} counts days of the calendar instead, so
 * every user asks for a share of {@link #meanPerYear()} and never for a number of degree-days.
 *
 * <p>Any day may be asked for: who knows a span of years only goes on with the mean year outside.
 */
public interface GrowthDays {

    /** Days of a mean year, leap years included. */
    double PLAIN_DAYS_PER_YEAR = 365.25;

    /** Calendar days, 365.25 a year, for places whose temperatures nobody has given. */
    static GrowthDays plain() {
        return PlainDays.EVERYWHERE;
    }

    /** Growth-time from the morning of one day to the morning of another; negative backwards. */
    double between(LocalDate from, LocalDate to);

    /**
     * The first day on whose morning this much growth-time has gone by since the morning of {@code
     * from}: the earliest {@code to} with {@code between(from, to) >= amount}.
     *
     * @param amount at 0 or below, {@code from} itself
     * @return empty when growth never comes to that much within reach
     * @throws IllegalArgumentException when the amount is NaN
     */
    Optional<LocalDate> dayReaching(LocalDate from, double amount);

    /** Growth-time of a mean year; 0 where nothing grows. */
    double meanPerYear();

    /**
     * Growth-time of a mean year for the same kind of tree in a cool-temperate climate, for rates
     * that are told by the year there; that of this place itself where temperatures are not known.
     */
    default double referencePerYear() {
        return meanPerYear();
    }
}
