package org.ripewood.core.growth;

import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * A straight line by ordinary least squares, and whether the readings need more than that.
 *
 * @param squares sum of the squared residuals
 * @param span years from the first reading to the last
 */
record LineFit(double slope, double level, double squares, int readings, double span) {

    private static final double LIKELY = 0.9;
    private static final double SURE = 0.999;
    private static final double STRAYED_PER_STEP = 15;

    /**
     * Fits; with all x alike the slope is NaN.
     *
     * @param x years, at least one, rising
     * @param y as many
     */
    static LineFit of(double[] x, double[] y) {
        double meanX = 0;
        double meanY = 0;
        for (int i = 0; i < x.length; i++) {
            meanX += x[i] / x.length;
            meanY += y[i] / x.length;
        }
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < x.length; i++) {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
        }
        double slope = sxy / sxx;
        double squares = 0;
        for (int i = 0; i < x.length; i++) {
            double off = y[i] - meanY - slope * (x[i] - meanX);
            squares += off * off;
        }
        return new LineFit(slope, meanY - slope * meanX, squares, x.length, x[x.length - 1] - x[0]);
    }

    /**
     * Whether a curve leaves over so much less that the line has to go.
     *
     * <p>Formula: the extra sum of squares for each further parameter exceeds, over the curve's own
     * mean square or that of measuring, the 90 % point of F; and, over that of measuring and of
     * seasons that differ, the 99.9 % point of χ²: a line bent by its seasons looks much like a
     * curve. A walk of steps of variance v over n years lies off its own best line by a mean square
     * of {@code v n / 15}. Source: Bates and Watts 1988, Nonlinear Regression Analysis and Its
     * Applications, ch. 3; Durlauf and Phillips 1988, Econometrica 56:1333-1354 (the walk).
     */
    boolean isOutdoneBy(CurveFit curve) {
        double measuring = Thickening.MEASURING_SD_MM * Thickening.MEASURING_SD_MM;
        double ownSquare = Math.max(measuring, curve.residualSd() * curve.residualSd());
        double step = ClosurePriors.SEASON_SPREAD * slope;
        double knownSquare = measuring + step * step * span / STRAYED_PER_STEP;
        int further = readings - 2 - curve.freedom();
        double less = squares - curve.squares();
        return less / further / ownSquare > likelyF(further, curve.freedom())
                && less / knownSquare > surelyMore(further);
    }

    private static double likelyF(int further, int freedom) {
        return FDistribution.of(further, freedom).inverseCumulativeProbability(LIKELY);
    }

    private static double surelyMore(int further) {
        return ChiSquaredDistribution.of(further).inverseCumulativeProbability(SURE);
    }
}
