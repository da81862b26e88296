package org.ripewood.core.agreement;

/**
 * Disagreement seen and disagreement to be expected by chance.
 *
 * @param rows shares of the first judge's grades
 * @param variance of 1 - observed/expected, for one pair; 0 where nothing is expected
 */
@SuppressWarnings("ArrayRecordComponent") // never leaves the method that asks for it
record Chance(double observed, double expected, double[] rows, double variance) {

    static Chance of(double[][] shares, double[][] weights) {
        int grades = shares.length;
        var rows = new double[grades];
        var columns = new double[grades];
        double observed = 0;
        for (int i = 0; i < grades; i++) {
            for (int j = 0; j < grades; j++) {
                rows[i] += shares[i][j];
                columns[j] += shares[i][j];
                observed += weights[i][j] * shares[i][j];
            }
        }
        var ofRow = new double[grades];
        var ofColumn = new double[grades];
        double expected = 0;
        for (int i = 0; i < grades; i++) {
            for (int j = 0; j < grades; j++) {
                ofRow[i] += weights[i][j] * columns[j];
                ofColumn[j] += weights[i][j] * rows[i];
                expected += weights[i][j] * rows[i] * columns[j];
            }
        }
        double variance = 0;
        if (expected > 0) {
            double ratio = observed / expected;
            for (int i = 0; i < grades; i++) {
                for (int j = 0; j < grades; j++) {
                    double pull =
                            (ratio * (ofRow[i] + ofColumn[j]) - weights[i][j]) / expected - ratio;
                    variance += shares[i][j] * pull * pull;
                }
            }
        }
        return new Chance(observed, expected, rows, variance);
    }
}
