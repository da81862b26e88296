package org.ripewood.trees;

import java.time.LocalDate;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.growth.ClosureForecast;
import org.ripewood.core.season.Outlook;

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
}
