package org.ripewood.sessions;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.stream.IntStream;
import org.ripewood.platform.problems.Refused;

/**
 * The days of a series of sessions. All fall on the weekday of the first: a monthly series that
 * begins on a second Saturday is held on second Saturdays. One that begins on a fifth goes on with
 * the last of each month, since most months have no fifth.
 */
public final class SeriesDates {

    public static final int MOST = 60;

    /** Further apart is no series (common practice, no source). */
    public static final int LONGEST_STEP = 26;

    private static final int LAST_OF_MONTH = -1;
    private static final int MOST_IN_EVERY_MONTH = 4;
    private static final int WEEK = 7;

    /** What lies between two sessions of a series. */
    public enum Unit {
        WEEKS,
        MONTHS
    }

    private SeriesDates() {}

    /**
     * The days, soonest first.
     *
     * @param every how many weeks or months apart, 1 to 26
     * @param times how many days, 1 to 60
     * @throws Refused 400 when one of the two is out of its bounds
     */
    public static List<LocalDate> of(LocalDate first, Unit unit, int every, int times) {
        requireWithin("every", every, LONGEST_STEP);
        requireWithin("times", times, MOST);
        return IntStream.range(0, times)
                .mapToObj(
                        step ->
                                unit == Unit.WEEKS
                                        ? first.plusWeeks((long) step * every)
                                        : inMonth(first, (long) step * every))
                .toList();
    }

    /** The day some months on that is the same of its weekdays in the month. */
    private static LocalDate inMonth(LocalDate first, long months) {
        int week = (first.getDayOfMonth() - 1) / WEEK + 1;
        var month = first.withDayOfMonth(1).plus(months, ChronoUnit.MONTHS);
        return month.with(
                TemporalAdjusters.dayOfWeekInMonth(
                        week > MOST_IN_EVERY_MONTH ? LAST_OF_MONTH : week, first.getDayOfWeek()));
    }

    private static void requireWithin(String field, int value, int most) {
        if (value < 1 || value > most) {
            throw Refused.invalid(field, "expected 1 to %d, found %d".formatted(most, value));
        }
    }
}
