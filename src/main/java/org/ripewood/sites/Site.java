package org.ripewood.sites;

import java.time.ZoneId;
import java.util.List;

/**
 * Where trees stand.
 *
 * @param latitude degrees, south negative
 * @param schoolGround whether everybody here may know where it lies and enter trees there
 * @param meanMinimaCelsius twelve monthly means, January first; empty when not known
 * @param meanMaximaCelsius twelve monthly means, January first; empty when not known
 * @param version of name, place and means; readings do not raise it
 * @param readingsRevision how often daily readings have been imported; 0 when there are none
 */
public record Site(
        long id,
        String name,
        double latitude,
        double longitude,
        ZoneId zone,
        boolean schoolGround,
        List<Double> meanMinimaCelsius,
        List<Double> meanMaximaCelsius,
        long version,
        long readingsRevision) {

    public Site {
        meanMinimaCelsius = List.copyOf(meanMinimaCelsius);
        meanMaximaCelsius = List.copyOf(meanMaximaCelsius);
    }

    /** Whether its monthly means are known. */
    public boolean hasMeans() {
        return !meanMinimaCelsius.isEmpty();
    }

    /** Whether daily readings have been imported. */
    public boolean hasReadings() {
        return readingsRevision > 0;
    }
}
