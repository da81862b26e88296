package org.ripewood.trees;

import java.time.ZoneId;
import java.util.List;

/**
 * Where trees stand.
 *
 * @param latitude degrees, south negative
 * @param meanMinimaCelsius twelve monthly means, January first; empty when not known
 * @param meanMaximaCelsius twelve monthly means, January first; empty when not known
 */
public record Site(
        long id,
        String name,
        double latitude,
        double longitude,
        ZoneId zone,
        List<Double> meanMinimaCelsius,
        List<Double> meanMaximaCelsius) {

    public Site {
        meanMinimaCelsius = List.copyOf(meanMinimaCelsius);
        meanMaximaCelsius = List.copyOf(meanMaximaCelsius);
    }
}
