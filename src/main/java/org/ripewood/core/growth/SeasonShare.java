package org.ripewood.core.growth;

/**
 * What readings say of a rate when each year's strays from it by a known share: a normal curve of
 * the rate, and for each rate a level at the last reading.
 *
 * <p>Three walks tell all: level and straying are linear in the rate, the log-likelihood is a
 * parabola of it.
 */
final class SeasonShare {

    private final double share;
    private final SeasonWalk still;
    private final SeasonWalk moving;
    private final double unit;
    private final double steep;
    private final double bend;

    /**
     * @param unit a rate of the size to be expected, above 0
     */
    SeasonShare(
            double[] x, double[] y, double measuringSd, SteadyRate.Seasons seasons, double unit) {
        double strayingSd = seasons.spread() * seasons.pace();
        double year = seasons.year();
        this.share = seasons.spread();
        this.unit = unit;
        this.still = SeasonWalk.along(x, y, measuringSd, 0, strayingSd, year);
        this.moving = SeasonWalk.along(x, y, measuringSd, unit, strayingSd, year);
        double twice =
                SeasonWalk.along(x, y, measuringSd, 2 * unit, strayingSd, year).logLikelihood();
        double once = moving.logLikelihood();
        double none = still.logLikelihood();
        this.bend = Math.min(0, (twice - 2 * once + none) / 2);
        this.steep = once - none - bend;
    }

    /** How precisely the readings alone say the rate: one over its variance. */
    double precision() {
        return -2 * bend / (unit * unit);
    }

    /** The rate by the readings alone, weighed by their precision. */
    double weighed() {
        return steep / unit;
    }

    /** Logarithm of how well this share explains the readings, whatever the rate. */
    double logEvidence() {
        return bend < 0
                ? still.logLikelihood() - steep * steep / (4 * bend) - Math.log(-bend) / 2
                : 0;
    }

    /** The level expected at x with this rate. */
    double levelAt(double x, double rate) {
        double atStill = still.levelAt(x);
        return atStill + rate / unit * (moving.levelAt(x) - atStill);
    }

    /** Its standard deviation. */
    double sdAt(double x, double rate) {
        double straying = share * rate;
        return Math.sqrt(still.varianceAt(x) + straying * straying * still.varianceAheadPerUnit(x));
    }
}
