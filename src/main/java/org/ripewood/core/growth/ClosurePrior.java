package org.ripewood.core.growth;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What is believed of a wound's closing before anybody has read it.
 *
 * @param rateMm mean rate at which one lip advances, mm per degree-day
 * @param rateSdMm its standard deviation; infinite for no belief at all
 * @param lag degree-days before the lips begin to move, in the mean: it may be next to none or
 *     twice as long; 0 for lips that move already
 * @param measuringSdMm standard deviation of a reading, mm
 * @param years how far one year's rate strays from the wound's own, as a share of it
 * @param paceMm what a lip of a well tree of its kind advances, mm per degree-day: sizes what
 *     seasons gone by strayed, so that a stronger tree's belief does not
 * @param year degree-days of a mean year, after which another season strays anew
 */
public record ClosurePrior(
        double rateMm,
        double rateSdMm,
        double lag,
        double measuringSdMm,
        YearSpread years,
        double paceMm,
        double year) {

    /** How widely rates of all trees of a kind lie about its pace, whatever their strength. */
    private static final double PACE_SPREAD = 0.6;

    /** Lags that may be, as a share of the mean one, and how likely each is believed. */
    private static final double[] LAGS = {0.15, 0.6, 1.2, 2.5};

    private static final double[] LAGS_BELIEVED = {0.2, 0.3, 0.3, 0.2};

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
                && paceMm > 0
                && Double.isFinite(paceMm)
                && year > 0)) {
            throw new IllegalArgumentException(
                    ("the lag must be 0 or more, measuring error, pace and year above 0, found %s,"
                                    + " %s, %s, %s")
                            .formatted(lag, measuringSdMm, paceMm, year));
        }
    }

    /** The same for lips that have moved before, as those of a wound that opened again. */
    ClosurePrior withoutLag() {
        return new ClosurePrior(rateMm, rateSdMm, 0, measuringSdMm, years, paceMm, year);
    }

    /** The same in a place of whose years something is known. */
    ClosurePrior in(YearSpread known) {
        return new ClosurePrior(rateMm, rateSdMm, lag, measuringSdMm, known, paceMm, year);
    }

    SteadyRate.Seasons seasons() {
        return new SteadyRate.Seasons(years, 2 * paceMm, PACE_SPREAD * 2 * paceMm, year);
    }

    List<SteadyRate.Case> lags() {
        if (lag == 0) {
            return List.of(new SteadyRate.Case(Pace.STEADY, 1));
        }
        return IntStream.range(0, LAGS.length)
                .mapToObj(i -> new SteadyRate.Case(Pace.after(LAGS[i] * lag), LAGS_BELIEVED[i]))
                .toList();
    }
}
