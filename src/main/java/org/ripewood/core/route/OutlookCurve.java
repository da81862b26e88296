package org.ripewood.core.route;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.ripewood.core.season.Outlook;

/**
 * An outlook as a table of days by probability, so that a draw costs a look-up and no dates.
 *
 * <p>The table has the middles of {@value #CELLS} equal shares; between them the day is read off a
 * straight line, and the outermost half shares (0.4 % each) take the outermost day.
 */
final class OutlookCurve {

    static final int CELLS = 128;

    private final int[] days;

    private OutlookCurve(int[] days) {
        this.days = days;
    }

    static OutlookCurve of(Outlook outlook, LocalDate from) {
        var days = new int[CELLS];
        for (int i = 0; i < CELLS; i++) {
            var day = outlook.dayAt((i + 0.5) / CELLS, from);
            days[i] =
                    day.map(at -> ChronoUnit.DAYS.between(from, at))
                            .filter(ahead -> ahead < YearsAhead.NEVER)
                            .map(Long::intValue)
                            .orElse(YearsAhead.NEVER);
        }
        return new OutlookCurve(days);
    }

    /** Days from the route's first day, or {@link YearsAhead#NEVER}. */
    int at(double probability) {
        double place = Math.max(0, Math.min(CELLS - 1.0, probability * CELLS - 0.5));
        int lower = (int) place;
        int upper = Math.min(CELLS - 1, lower + 1);
        if (days[lower] == YearsAhead.NEVER || days[upper] == YearsAhead.NEVER) {
            return days[place - lower < 0.5 ? lower : upper];
        }
        return (int) Math.round(days[lower] + (place - lower) * (days[upper] - days[lower]));
    }
}
