package org.ripewood.condition;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.growth.ClosureForecast;
import org.ripewood.core.season.Outlook;
import org.ripewood.records.Wound;

/**
 * A wound and how it is going to close.
 *
 * @param on the day it is told for
 */
public record Closing(Wound wound, LocalDate on, ClosureForecast forecast) {

    /** When it no longer counts as open. */
    public Outlook narrow() {
        return forecast.whenAtMost(Math.nextDown(Closure.OPEN_FROM_MM), on);
    }

    /** When the lips meet. */
    public Outlook closed() {
        return forecast.whenAtMost(0, on);
    }

    /**
     * The openings to be expected month by month, from the last look until a year after it has
     * likely closed, at most twenty years on; two years from the day where that cannot be said.
     */
    public List<ClosureForecast.Band> band() {
        var from = wound.closure().latest().on();
        var until =
                closed() instanceof Outlook.Expected expected
                        ? expected.likely().plusYears(1)
                        : on.plusYears(2);
        var last = until.isBefore(from.plusYears(20)) ? until : from.plusYears(20);
        return forecast.band(from.datesUntil(last, Period.ofMonths(1)).toList());
    }
}
