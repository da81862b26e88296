package org.ripewood.core.growth;

import java.util.ArrayList;
import java.util.List;
import org.ripewood.core.season.GrowthDays;

/**
 * Whether a wound has stood still for a growing season or longer, by all looks at it.
 *
 * <p>Two ways of having got there are compared: that it closed all along, at any rate of its kind
 * and through good and bad years; and that it closed until one of its looks, at least a season
 * before the last, and not since. Each is as likely as it explains all looks, errors of reading
 * included.
 */
final class Standstill {

    /** How likely a wound stops at one of its looks (common practice, no source). */
    private static final double BELIEVED = 0.05;

    /** More looks at which it may have stopped are not tried. */
    private static final int MOST_STOPS = 6;

    private static final int EVERY_LOOK = 3;

    private static final double MOST_LOG = 700;

    private Standstill() {}

    /**
     * The probability that it has stood still since a look at least {@link Closure#SEASON_SHARE} of
     * a mean year's growth-time before the last.
     *
     * <p>Edge cases: 0 when no look lies that far back, and where nothing grows. The tree's own
     * strength is not regarded: the kind's rates are taken as widely spread as strong and weak
     * trees make them.
     */
    static double probability(Closure closure, ClosingBelief belief, GrowthDays days) {
        var looks = closure.sinceReopened();
        if (looks.size() < 2 || !(days.meanPerYear() > 0)) {
            return 0;
        }
        var prior = ClosurePriors.prior(belief, null, null, days);
        if (looks.size() < closure.looks().size()) {
            prior = prior.withoutLag();
        }
        var readings = ClosureModel.inOrder(ClosureForecast.readings(looks, days), prior);
        var stops = stops(readings, Closure.SEASON_SHARE * days.meanPerYear(), prior.lag());
        if (stops.isEmpty()) {
            return 0;
        }
        double closing = SteadyRate.logEvidence(readings, prior.seasons(), prior.lags());
        double stood = 0;
        for (double stop : stops) {
            double still =
                    SteadyRate.logEvidence(readings.stoppedAt(stop), prior.seasons(), prior.lags());
            stood += BELIEVED * Math.exp(Math.min(MOST_LOG, still - closing));
        }
        return stood / (stood + 1 - BELIEVED * stops.size());
    }

    /** Growth-times at which it may have stopped: the last looks early enough, then ever fewer. */
    private static List<Double> stops(Readings readings, double season, double lag) {
        int latest = readings.size() - 2;
        while (latest >= 0 && readings.x(latest) > readings.lastX() - season) {
            latest--;
        }
        var stops = new ArrayList<Double>();
        for (int back = 0; back <= latest && stops.size() < MOST_STOPS; ) {
            double stop = readings.x(latest - back);
            // Lips that have not begun to move rest first.
            if (stop > 0 || readings.lastX() >= season + lag) {
                stops.add(stop);
            }
            back += back < EVERY_LOOK ? 1 : back;
        }
        return stops;
    }
}
