package org.ripewood.core.growth;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.season.GrowthDays;
import org.ripewood.core.season.Outlook;

/**
 * Growth-times at which something is reached, told as days.
 *
 * @param origin growth-times count from here
 * @param seen when somebody last looked and found it not reached
 */
record Reached(LocalDate origin, LocalDate seen, LocalDate today, GrowthDays days) {

    static final double EARLY = 0.1;
    static final double LIKELY = 0.5;
    static final double LATE = 0.9;

    /**
     * The outlook, from growth-times since the origin, infinite for never.
     *
     * @param what what has to come about, as a sentence's subject
     */
    Outlook outlook(double early, double likely, double late, String what) {
        var earliest = day(early);
        if (earliest == null) {
            return new Outlook.Unsaid(
                    "%s is not expected within %d years at the pace so far"
                            .formatted(what, Outlook.REACH_YEARS));
        }
        var middle = day(likely);
        if (middle == null) {
            return new Outlook.Unsaid(
                    "%s may come about from %s on, but more likely not within %d years"
                            .formatted(what, fromToday(earliest), Outlook.REACH_YEARS));
        }
        var latest = day(late);
        return new Outlook.Expected(
                fromToday(earliest),
                fromToday(middle),
                latest == null ? null : fromToday(latest),
                middle.isBefore(today) ? middle : null);
    }

    /** Not before somebody last looked and found it not reached. */
    private @Nullable LocalDate day(double growthTime) {
        if (!Double.isFinite(growthTime)) {
            return null;
        }
        var day = days.dayReaching(origin, growthTime).orElse(null);
        if (day == null || day.isAfter(today.plusYears(Outlook.REACH_YEARS))) {
            return null;
        }
        return day.isBefore(seen) ? seen : day;
    }

    /** A day gone by without being seen counts as today: nobody has looked since. */
    private LocalDate fromToday(LocalDate day) {
        return day.isBefore(today) ? today : day;
    }
}
