package org.ripewood.core.growth;

/**
 * What is believed of a wound's closing before anybody has read it.
 *
 * @param rateMm mean rate at which one lip advances, mm per degree-day
 * @param rateSdMm its standard deviation; infinite for no belief at all
 * @param lag degree-days before the lips begin to move
 * @param measuringSdMm standard deviation of a reading, mm
 * @param seasonSpread how far one season's rate strays from the wound's own, as a share of it
 * @param paceMm what a lip of a well tree of its kind advances, mm per degree-day: sizes what
 *     seasons gone by strayed, so that a stronger tree's belief does not
 * @param year degree-days of a mean year, after which another season strays anew
 */
public record ClosurePrior(
        double rateMm,
        double rateSdMm,
        double lag,
        double measuringSdMm,
        double seasonSpread,
        double paceMm,
        double year) {

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
                && Double.isFinite(seasonSpread)
                && paceMm > 0
                && Double.isFinite(paceMm)
                && year > 0)) {
            throw new IllegalArgumentException(
                    "lag and season spread must be 0 or more, measuring error, pace and year above"
                            + " 0, found %s, %s, %s, %s, %s"
                                    .formatted(lag, seasonSpread, measuringSdMm, paceMm, year));
        }
    }

    /** The same for lips that have moved before, as those of a wound that opened again. */
    ClosurePrior withoutLag() {
        return new ClosurePrior(rateMm, rateSdMm, 0, measuringSdMm, seasonSpread, paceMm, year);
    }
}
