package org.ripewood.core.growth;

/**
 * What is believed of a wound's closing before anybody has read it.
 *
 * @param rateMm mean rate at which one lip advances, mm per degree-day
 * @param rateSdMm its standard deviation; infinite for no belief at all
 * @param lag degree-days before the lips begin to move
 * @param measuringSdMm standard deviation of a reading, mm
 * @param seasonSpread how far the rate to come may differ from the rate so far, as a share of it:
 *     one season is not like another
 */
public record ClosurePrior(
        double rateMm, double rateSdMm, double lag, double measuringSdMm, double seasonSpread) {

    public ClosurePrior {
        if (!(rateMm > 0 && Double.isFinite(rateMm) && rateSdMm > 0)) {
            throw new IllegalArgumentException(
                    "a rate and its spread must be above 0, found %s and %s"
                            .formatted(rateMm, rateSdMm));
        }
        if (!(lag >= 0
                && Double.isFinite(lag)
                && measuringSdMm > 0
                && Double.isFinite(measuringSdMm)
                && seasonSpread >= 0
                && Double.isFinite(seasonSpread))) {
            throw new IllegalArgumentException(
                    "lag and season spread must be 0 or more and the measuring error above 0");
        }
    }

    /** The same for lips that have moved before, as those of a wound that opened again. */
    ClosurePrior withoutLag() {
        return new ClosurePrior(rateMm, rateSdMm, 0, measuringSdMm, seasonSpread);
    }
}
