package org.ripewood.core.growth;

/**
 * What readings say of a rate, the pace and the share by which years stray taken as true: a normal
 * curve of the rate cut off at 0, laid out over some rates, and for each a level at the last
 * reading.
 */
final class SeasonShare {

    private static final int RATES = 25;
    private static final double REACH_SDS = 4.2;

    private final double share;
    private final SeasonWalk walk;
    private final double[] rates = new double[RATES];
    private final double[] weights = new double[RATES];

    /**
     * @param believed what is believed of this width's rate
     */
    SeasonShare(double share, SeasonWalk walk, Believed believed) {
        this.share = share;
        this.walk = walk;
        layOut(believed);
    }

    /** A normal belief about a rate; infinitely wide for none. */
    record Believed(double rate, double sd) {
        double precision() {
            return 1 / (sd * sd);
        }
    }

    /**
     * Logarithm of how well a walk explains its readings when the rate is believed so, up to a
     * constant of the belief.
     */
    static double logEvidence(SeasonWalk walk, Believed believed) {
        double precision = believed.precision() + walk.precision();
        double rate = (believed.precision() * believed.rate() + walk.weighed()) / precision;
        return walk.logLikelihood(0)
                + precision * rate * rate / 2
                - Math.log(precision) / 2
                + Math.log(Math.max(1e-300, NormalCurve.below(rate * Math.sqrt(precision))));
    }

    private void layOut(Believed believed) {
        double precision = believed.precision() + walk.precision();
        double rate = (believed.precision() * believed.rate() + walk.weighed()) / precision;
        double rateSd = 1 / Math.sqrt(precision);
        if (!Double.isFinite(rateSd)) {
            throw new IllegalArgumentException(
                    "one reading says nothing of the rate, and neither does the prior");
        }
        double low = Math.max(0, rate - REACH_SDS * rateSd);
        double high = Math.max(rate + REACH_SDS * rateSd, low + REACH_SDS * rateSd);
        // Far out on one side every weight may be too small for a double: take the first one's own.
        double first = low + (high - low) * 0.5 / RATES;
        double edge = rate < low ? (first - rate) / rateSd : 0;
        double total = 0;
        for (int i = 0; i < RATES; i++) {
            rates[i] = low + (high - low) * (i + 0.5) / RATES;
            double z = (rates[i] - rate) / rateSd;
            weights[i] = Math.exp((edge - z) * (edge + z) / 2);
            total += weights[i];
        }
        for (int i = 0; i < RATES; i++) {
            weights[i] /= total;
        }
    }

    /** Mean of the rate to a power, the cut at 0 regarded. */
    double moment(int power) {
        double moment = 0;
        for (int i = 0; i < RATES; i++) {
            moment += weights[i] * Math.pow(rates[i], power);
        }
        return moment;
    }

    double middleRate() {
        return rates[RATES / 2];
    }

    SeasonWalk.Ahead ahead(double x) {
        return walk.ahead(x);
    }

    /** The probability that the width is at most {@code y} there. */
    double probabilityAtMost(double y, SeasonWalk.Ahead there) {
        double straying = share * share * there.aheadPerUnit();
        double off = y - there.level();
        double probability = 0;
        for (int i = 0; i < RATES; i++) {
            double rate = rates[i];
            double sd = Math.sqrt(there.variance() + straying * rate * rate);
            probability += weights[i] * NormalCurve.below((off - rate * there.perRate()) / sd);
        }
        return probability;
    }

    /** The lowest and the highest width to be looked for there. */
    double[] reach(SeasonWalk.Ahead there, double sds) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double rate : new double[] {rates[0], rates[RATES - 1]}) {
            double middle = there.level() + rate * there.perRate();
            double straying = share * rate;
            double reach =
                    sds * Math.sqrt(there.variance() + straying * straying * there.aheadPerUnit());
            low = Math.min(low, middle - reach);
            high = Math.max(high, middle + reach);
        }
        return new double[] {low, high};
    }
}
