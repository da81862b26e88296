package org.ripewood.core.season;

import java.time.LocalDate;

/** The lowest and highest temperature of each day at a site, past and to come, in °C. */
public interface DayTemperatures {

    double minCelsius(LocalDate day);

    double maxCelsius(LocalDate day);

    /**
     * How far single days scatter around these values, as a standard deviation in °C: 0 for
     * readings, some degrees for means, which are smoother than weather and would otherwise give
     * too few degree-days.
     */
    double scatterCelsius(LocalDate day);
}
