package org.ripewood.core.growth;

import org.apache.commons.statistics.distribution.FDistribution;

/** A straight line by ordinary least squares, and whether the readings need more than that. */
record LineFit(double slope, double level, double squares, int readings) {

    private static final double SURE = 0.9;

    /**
     * Fits; with all x alike the slope is NaN.
     *
     * @param x at least one
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
        return new LineFit(slope, meanY - slope * meanX, squares, x.length);
    }

    /**
     * Whether a curve leaves over so much less that the line has to go.
     *
     * <p>Formula: the extra sum of squares for each further parameter, over the curve's mean square
     * or that of measuring, whichever is more, exceeds the 90 % point of F. Source: Bates and Watts
     * 1988, Nonlinear Regression Analysis and Its Applications, ch. 3.
     */
    boolean isOutdoneBy(CurveFit curve) {
        double measuring = Thickening.MEASURING_SD_MM * Thickening.MEASURING_SD_MM;
        double meanSquare = Math.max(measuring, curve.residualSd() * curve.residualSd());
        int further = readings - 2 - curve.freedom();
        double f = (squares - curve.squares()) / further / meanSquare;
        return f > FDistribution.of(further, curve.freedom()).inverseCumulativeProbability(SURE);
    }
}
