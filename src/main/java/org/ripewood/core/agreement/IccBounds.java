package org.ripewood.core.agreement;

import java.util.Optional;
import org.apache.commons.statistics.distribution.FDistribution;

/** An intraclass correlation and its bounds, of mean squares that are not all 0. */
record IccBounds(double value, double lower, double upper) {

    private static final double ROUNDING = 1e-9;

    /** Empty where it has no value or no bound. */
    static Optional<IccBounds> of(MeanSquares squares, IccForm form, double confidence) {
        double tail = (1 - confidence) / 2;
        var bounds =
                switch (form.design()) {
                    case ONE_WAY ->
                            ofRatio(
                                    squares,
                                    squares.withinTargets(),
                                    squares.targets() * (squares.judges() - 1),
                                    tail);
                    case TWO_WAY_FIXED ->
                            ofRatio(
                                    squares,
                                    squares.error(),
                                    (squares.targets() - 1) * (squares.judges() - 1),
                                    tail);
                    case TWO_WAY_RANDOM -> ofRandom(squares, tail);
                };
        return (form.isOfMean() ? bounds.ofMean(squares.judges()) : Optional.of(bounds))
                .filter(IccBounds::isFinite);
    }

    private static IccBounds ofRatio(
            MeanSquares squares, double noise, int noiseFreedom, double tail) {
        int freedom = squares.targets() - 1;
        double between = squares.betweenTargets();
        int judges = squares.judges();
        return new IccBounds(
                single(between, noise, judges),
                single(between, noise * mostF(freedom, noiseFreedom, tail), judges),
                single(between * mostF(noiseFreedom, freedom, tail), noise, judges));
    }

    private static double single(double between, double noise, int judges) {
        return (between - noise) / (between + (judges - 1) * noise);
    }

    private static IccBounds ofRandom(MeanSquares squares, double tail) {
        double value = random(squares, 1, 1);
        double noiseFreedom = freedom(squares, value);
        int freedom = squares.targets() - 1;
        return new IccBounds(
                value,
                random(squares, 1, mostF(freedom, noiseFreedom, tail)),
                random(squares, mostF(noiseFreedom, freedom, tail), 1));
    }

    /** Form (2,1) with the mean square of targets, or all others, made larger. */
    private static double random(MeanSquares squares, double moreBetween, double moreNoise) {
        double n = squares.targets();
        double k = squares.judges();
        double between = n * squares.betweenTargets() * moreBetween;
        double error = squares.error();
        double noise = k * squares.betweenJudges() + (k * n - k - n) * error;
        return (between - n * error * moreNoise) / (noise * moreNoise + between);
    }

    /**
     * Satterthwaite's degrees of freedom of what stands against the targets; by a negative value
     * they can fall towards 0, where F has no usable bounds.
     */
    private static double freedom(MeanSquares squares, double value) {
        double n = squares.targets();
        double k = squares.judges();
        double rest = n * (1 - value);
        double severity = k * value * squares.betweenJudges();
        double error = (rest + k * value * (n - 1)) * squares.error();
        double sum = severity + error;
        double spread = severity * severity / (k - 1) + error * error / ((n - 1) * (k - 1));
        return spread > 0 ? Math.max(1, sum * sum / spread) : 1;
    }

    /** Spearman and Brown: what holds for one judge, told of the mean of all. */
    private Optional<IccBounds> ofMean(int judges) {
        return 1 + (judges - 1) * lower > ROUNDING
                ? Optional.of(
                        new IccBounds(
                                ofMean(value, judges),
                                ofMean(lower, judges),
                                ofMean(upper, judges)))
                : Optional.empty();
    }

    private static double ofMean(double single, int judges) {
        return judges * single / (1 + (judges - 1) * single);
    }

    private static double mostF(double above, double below, double tail) {
        return FDistribution.of(above, below).inverseSurvivalProbability(tail);
    }

    private boolean isFinite() {
        return Double.isFinite(value) && Double.isFinite(lower) && Double.isFinite(upper);
    }
}
