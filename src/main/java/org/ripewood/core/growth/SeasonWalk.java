package org.ripewood.core.growth;

/**
 * What readings say when seasons differ, for one rate taken as true: a Kalman filter over the level
 * and over how far the season's rate strays from its own.
 *
 * <p>The straying is an Ornstein–Uhlenbeck process with a time constant of a third of a year:
 * within a season it lasts, and over n years the level has strayed by √n times what one year's rate
 * strays. Its integral over a step has a closed form (Gillespie 1996, Phys. Rev. E 54:2084-2091).
 * Level and straying are linear in the rate, and the log-likelihood is a parabola of it. Without
 * straying the filter is least squares with the rate given.
 */
final class SeasonWalk {

    private static final double CONSTANTS_A_YEAR = 3;

    private final double rate;
    private final double strayingVariance;
    private final double constant;

    private double lastX;
    private double level;
    private double straying;
    private double levelVariance;
    private double strayingLeft;
    private double both;
    private double logLikelihood;

    private SeasonWalk(double rate, double strayingSd, double year) {
        this.rate = rate;
        this.strayingVariance = CONSTANTS_A_YEAR / 2 * strayingSd * strayingSd;
        this.constant = year / CONSTANTS_A_YEAR;
    }

    /**
     * Walks along readings.
     *
     * @param x growth-times, at least one, rising
     * @param y levels read there, each off by {@code measuringSd}
     * @param rate by which the level falls
     * @param strayingSd standard deviation of one year's rate about it
     * @param year growth-time of a mean year, above 0
     */
    static SeasonWalk along(
            double[] x,
            double[] y,
            double measuringSd,
            double rate,
            double strayingSd,
            double year) {
        var walk = new SeasonWalk(rate, strayingSd, year);
        double variance = measuringSd * measuringSd;
        walk.lastX = x[0];
        walk.level = y[0];
        walk.levelVariance = variance;
        walk.strayingLeft = walk.strayingVariance;
        for (int i = 1; i < x.length; i++) {
            walk.step(x[i] - walk.lastX);
            walk.lastX = x[i];
            walk.read(y[i], variance);
        }
        return walk;
    }

    private void step(double over) {
        double kept = Math.exp(-over / constant);
        double carried = constant * (1 - kept);
        level -= rate * over + carried * straying;
        straying *= kept;
        levelVariance +=
                carried * carried * strayingLeft - 2 * carried * both + walked(over, kept, carried);
        both = kept * (both - carried * strayingLeft) - walkedTogether(kept);
        strayingLeft = kept * kept * strayingLeft + strayingVariance * (1 - kept * kept);
    }

    private void read(double y, double measuringVariance) {
        double off = y - level;
        double variance = levelVariance + measuringVariance;
        double gain = levelVariance / variance;
        double gainOfStraying = both / variance;
        level += gain * off;
        straying += gainOfStraying * off;
        strayingLeft -= gainOfStraying * both;
        both *= 1 - gain;
        levelVariance *= 1 - gain;
        logLikelihood -= (off * off / variance + Math.log(variance)) / 2;
    }

    private double walked(double over, double kept, double carried) {
        return strayingVariance * walkedPerVariance(over, kept, carried);
    }

    private double walkedPerVariance(double over, double kept, double carried) {
        double walked = over - 2 * carried + constant * (1 - kept * kept) / 2;
        return Math.max(0, 2 * constant * walked);
    }

    private double walkedTogether(double kept) {
        return strayingVariance * constant * (1 - kept) * (1 - kept);
    }

    /** Up to a constant that is the same for every rate and straying. */
    double logLikelihood() {
        return logLikelihood;
    }

    /** The level expected at x; before the last reading on a straight line. */
    double levelAt(double x) {
        double over = x - lastX;
        double carried = over > 0 ? constant * (1 - Math.exp(-over / constant)) : 0;
        return level - rate * over - carried * straying;
    }

    /** The variance of the level at x from what is not known of the last reading. */
    double varianceAt(double x) {
        double over = x - lastX;
        if (!(over > 0)) {
            return levelVariance;
        }
        double carried = constant * (1 - Math.exp(-over / constant));
        return levelVariance + carried * carried * strayingLeft - 2 * carried * both;
    }

    /** The variance of the level at x from seasons to come, for years' rates that stray by 1. */
    double varianceAheadPerUnit(double x) {
        double over = x - lastX;
        if (!(over > 0)) {
            return 0;
        }
        double kept = Math.exp(-over / constant);
        return CONSTANTS_A_YEAR / 2 * walkedPerVariance(over, kept, constant * (1 - kept));
    }
}
