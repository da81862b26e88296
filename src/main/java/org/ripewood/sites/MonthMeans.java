package org.ripewood.sites;

import jakarta.persistence.Embeddable;

/** A month's mean of the daily minima and maxima. */
@Embeddable
class MonthMeans {

    double meanMinimumCelsius;
    double meanMaximumCelsius;

    MonthMeans() {}

    MonthMeans(double meanMinimumCelsius, double meanMaximumCelsius) {
        this.meanMinimumCelsius = meanMinimumCelsius;
        this.meanMaximumCelsius = meanMaximumCelsius;
    }
}
