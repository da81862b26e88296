package org.ripewood.core.agreement;

import java.util.Arrays;

/**
 * What the analysis of variance of a full table of scores comes to; in squared units of the scores.
 *
 * @param betweenTargets how much the things judged differ, on n - 1 degrees of freedom
 * @param withinTargets how much scores of one thing differ, on n(k - 1)
 * @param betweenJudges how much judges differ in severity, on k - 1
 * @param error what is left, on (n - 1)(k - 1)
 * @param targets n, how many things were judged
 * @param judges k
 */
public record MeanSquares(
        double betweenTargets,
        double withinTargets,
        double betweenJudges,
        double error,
        int targets,
        int judges) {

    /** Sums of squares within what rounding leaves of scores so large count as none. */
    private static final double ROUNDING = 1e-13;

    /**
     * @throws IllegalArgumentException when a mean square is negative or NaN, or there are fewer
     *     than two targets or judges
     */
    public MeanSquares {
        if (!(betweenTargets >= 0
                && withinTargets >= 0
                && betweenJudges >= 0
                && error >= 0
                && targets > 1
                && judges > 1)) {
            throw new IllegalArgumentException(
                    "no mean squares: %s, %s, %s, %s of %d targets and %d judges"
                            .formatted(
                                    betweenTargets,
                                    withinTargets,
                                    betweenJudges,
                                    error,
                                    targets,
                                    judges));
        }
    }

    /** Of a full table of at least 2 by 2 finite scores, a row a target. */
    static MeanSquares of(double[][] scores) {
        int targets = scores.length;
        int judges = scores[0].length;
        double largest =
                Arrays.stream(scores)
                        .flatMapToDouble(Arrays::stream)
                        .map(Math::abs)
                        .max()
                        .orElse(0);
        var targetMeans = new double[targets];
        var judgeMeans = new double[judges];
        double mean = 0;
        for (int i = 0; i < targets; i++) {
            for (int j = 0; j < judges; j++) {
                targetMeans[i] += scores[i][j] / judges;
                judgeMeans[j] += scores[i][j] / targets;
                mean += scores[i][j] / judges / targets;
            }
        }
        double between = 0;
        double within = 0;
        double severity = 0;
        double left = 0;
        for (int i = 0; i < targets; i++) {
            for (int j = 0; j < judges; j++) {
                double score = scores[i][j];
                between += square(targetMeans[i] - mean);
                within += square(score - targetMeans[i]);
                severity += square(judgeMeans[j] - mean);
                left += square(score - targetMeans[i] - judgeMeans[j] + mean);
            }
        }
        double nothing = square(ROUNDING * largest) * targets * judges;
        return new MeanSquares(
                meanOf(between, targets - 1, nothing),
                meanOf(within, targets * (judges - 1), nothing),
                meanOf(severity, judges - 1, nothing),
                meanOf(left, (targets - 1) * (judges - 1), nothing),
                targets,
                judges);
    }

    private static double meanOf(double squares, int freedom, double nothing) {
        return squares <= nothing ? 0 : squares / freedom;
    }

    private static double square(double x) {
        return x * x;
    }
}
