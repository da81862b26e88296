package org.ripewood.core.growth;

/**
 * What readings say when seasons differ: a Kalman filter over the level and over how far the
 * season's rate strays from its own, for all rates at once.
 *
 * <p>The straying is an Ornstein–Uhlenbeck process with a time constant of a third of a year:
 * within a season it lasts, and over n years the level has strayed by √n times what one year's rate
 * strays. Its integral over a step has a closed form (Gillespie 1996, Phys. Rev. E 54:2084-2091).
 * Level and straying are linear in the rate, so one walk carries what they are at rate 0 and what
 * each unit of rate adds; the log-likelihood is a parabola of the rate. Without straying the filter
 * is least squares. Where growth slows down, what a season strays shrinks with it.
 */
final class SeasonWalk {

    private static final double CONSTANTS_A_YEAR = 3;

    private final Pace pace;
    private final double strayingVariance;
    private final double constant;

    private double lastX;
    private double level;
    private double levelPerRate;
    private double straying;
    private double strayingPerRate;
    private double levelVariance;
    private double strayingLeft;
    private double both;

    private double squares;
    private double product;
    private double squaresPerRate;
    private double logarithms;

    private SeasonWalk(Pace pace, double strayingSd, double year) {
        this.pace = pace;
        this.strayingVariance = CONSTANTS_A_YEAR / 2 * strayingSd * strayingSd;
        this.constant = year / CONSTANTS_A_YEAR;
    }

    /**
     * Walks along readings.
     *
     * @param pace how growth-time counts
     * @param strayingSd standard deviation of one year's rate about the width's own
     * @param year growth-time of a mean year, above 0
     */
    static SeasonWalk along(Readings readings, Pace pace, double strayingSd, double year) {
        var walk = new SeasonWalk(pace, strayingSd, year);
        walk.lastX = readings.x(0);
        walk.level = readings.y(0);
        walk.levelVariance = readings.variance(0);
        walk.strayingLeft = walk.strayingVariance;
        for (int i = 1; i < readings.size(); i++) {
            walk.step(readings.x(i));
            walk.read(readings.y(i), readings.variance(i));
        }
        return walk;
    }

    private void step(double x) {
        double over = pace.moving(x) - pace.moving(lastX);
        if (over > 0) {
            move(over, pace.gone(x) - pace.gone(lastX));
        }
        lastX = x;
    }

    private void move(double over, double gone) {
        double counts = gone / over;
        double kept = Math.exp(-over / constant);
        double carried = counts * constant * (1 - kept);
        level -= carried * straying;
        levelPerRate -= gone + carried * strayingPerRate;
        straying *= kept;
        strayingPerRate *= kept;
        levelVariance +=
                carried * carried * strayingLeft
                        - 2 * carried * both
                        + counts * counts * strayingVariance * walked(over, kept);
        double walkedTogether = strayingVariance * constant * (1 - kept) * (1 - kept);
        both = kept * (both - carried * strayingLeft) - counts * walkedTogether;
        strayingLeft = kept * kept * strayingLeft + strayingVariance * (1 - kept * kept);
    }

    private void read(double y, double measuringVariance) {
        double variance = levelVariance + measuringVariance;
        double off = y - level;
        squares += off * off / variance;
        product += off * levelPerRate / variance;
        squaresPerRate += levelPerRate * levelPerRate / variance;
        logarithms += Math.log(variance);
        double gain = levelVariance / variance;
        double gainOfStraying = both / variance;
        straying += gainOfStraying * off;
        strayingPerRate -= gainOfStraying * levelPerRate;
        level += gain * off;
        levelPerRate *= 1 - gain;
        strayingLeft -= gainOfStraying * both;
        both *= 1 - gain;
        levelVariance *= 1 - gain;
    }

    private double walked(double over, double kept) {
        double walked = over - 2 * constant * (1 - kept) + constant * (1 - kept * kept) / 2;
        return Math.max(0, 2 * constant * walked);
    }

    /** Of a rate, up to a constant that is the same for every rate and straying. */
    double logLikelihood(double rate) {
        return -(squares - 2 * rate * product + rate * rate * squaresPerRate + logarithms) / 2;
    }

    /** How precisely the readings alone say the rate: one over its variance. */
    double precision() {
        return squaresPerRate;
    }

    /** The rate by the readings alone, weighed by their precision. */
    double weighed() {
        return product;
    }

    /** What lies ahead at x, or on a straight line behind the last reading. */
    Ahead ahead(double x) {
        double over = pace.moving(x) - pace.moving(lastX);
        double gone = pace.gone(x) - pace.gone(lastX);
        if (!(over > 0)) {
            return new Ahead(level, levelPerRate - gone, levelVariance, 0);
        }
        double counts = pace.at(lastX);
        double kept = Math.exp(-over / constant);
        double carried = counts * constant * (1 - kept);
        // What seasons stray shrinks or grows with the rate: by its mean over the way ahead.
        double mean = gone / over;
        return new Ahead(
                level - carried * straying,
                levelPerRate - gone - carried * strayingPerRate,
                levelVariance + carried * carried * strayingLeft - 2 * carried * both,
                CONSTANTS_A_YEAR / 2 * counts * mean * walked(over, kept));
    }

    /**
     * A level that is known but for the rate.
     *
     * @param level expected at rate 0
     * @param perRate what each unit of rate adds to it
     * @param variance from what is not known of the last reading
     * @param aheadPerUnit variance from seasons to come, for years' rates that stray by 1
     */
    record Ahead(double level, double perRate, double variance, double aheadPerUnit) {}
}
