package org.ripewood.core.growth;

import java.util.Optional;
import org.apache.commons.statistics.distribution.TDistribution;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A curve fitted to readings by least squares (Levenberg–Marquardt), with the delta method's
 * errors.
 */
final class CurveFit {

    private static final int MOST_ROUNDS = 200;
    private static final double BELIEVED_FREEDOM = 4;
    private static final double SINGULAR = 1e-12;

    private final GrowthCurve curve;
    private final double[] parameters;

    /** Of the parameters, for readings of variance 1. */
    private final double[][] covariances;

    private final double squares;
    private final int readings;

    private CurveFit(GrowthCurve curve, Optimum optimum, int readings) {
        this.curve = curve;
        this.parameters = optimum.getPoint().toArray();
        this.squares = optimum.getResiduals().dotProduct(optimum.getResiduals());
        this.readings = readings;
        this.covariances = optimum.getCovariances(SINGULAR).getData();
    }

    /**
     * Fits, or finds that the readings do not carry the curve.
     *
     * @param x growing, from 0
     * @param y as many
     */
    static Optional<CurveFit> of(GrowthCurve curve, double[] x, double[] y) {
        if (x.length < curve.leastReadings()) {
            return Optional.empty();
        }
        double span = x[x.length - 1] - x[0];
        var start = curve.start(y[0], y[y.length - 1], span);
        var problem =
                new LeastSquaresBuilder()
                        .start(start)
                        .target(y)
                        .model(model(curve, x))
                        .maxEvaluations(MOST_ROUNDS)
                        .maxIterations(MOST_ROUNDS)
                        .build();
        try {
            var fit =
                    new CurveFit(
                            curve, new LevenbergMarquardtOptimizer().optimize(problem), x.length);
            return fit.sound() ? Optional.of(fit) : Optional.empty();
        } catch (MathRuntimeException noFit) {
            return Optional.empty();
        }
    }

    private static MultivariateJacobianFunction model(GrowthCurve curve, double[] x) {
        return point -> {
            var p = point.toArray();
            var values = new double[x.length];
            var slopes = new double[x.length][];
            for (int i = 0; i < x.length; i++) {
                values[i] = curve.at(x[i], p);
                slopes[i] = curve.gradient(x[i], p);
            }
            return new Pair<>(
                    new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
        };
    }

    /** Grows towards a finite size, and every parameter has an error. */
    private boolean sound() {
        for (int i = 0; i < parameters.length; i++) {
            if (!Double.isFinite(parameters[i]) || !(covariances[i][i] >= 0)) {
                return false;
            }
        }
        return parameters[0] > 0 && rise(0, 1) > 0;
    }

    double[] parameters() {
        return parameters.clone();
    }

    /** Standard error of a parameter. */
    double error(int parameter) {
        return residualSd() * Math.sqrt(covariances[parameter][parameter]);
    }

    double residualSd() {
        return Math.sqrt(squares / freedom());
    }

    GrowthCurve curve() {
        return curve;
    }

    int freedom() {
        return readings - curve.parameters;
    }

    /** The sum of squares left over. */
    double squares() {
        return squares;
    }

    /**
     * Akaike's criterion for small samples: {@code n ln(RSS/n) + 2k + 2k(k + 1)/(n − k − 1)}, k the
     * parameters and the variance; infinite where n leaves nothing over. Hurvich and Tsai 1989,
     * Biometrika 76:297-307.
     */
    double aicc() {
        int k = curve.parameters + 1;
        int over = readings - k - 1;
        if (over <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        return readings * Math.log(squares / readings) + 2.0 * k + 2.0 * k * (k + 1) / over;
    }

    double at(double x) {
        return curve.at(x, parameters);
    }

    double rise(double from, double to) {
        return at(to) - at(from);
    }

    /** Standard error of the curve at x, by the delta method. */
    double errorAt(double x) {
        return delta(curve.gradient(x, parameters));
    }

    /** Standard error of what it gains between two x. */
    double errorOfRise(double from, double to) {
        var low = curve.gradient(from, parameters);
        var high = curve.gradient(to, parameters);
        for (int i = 0; i < high.length; i++) {
            high[i] -= low[i];
        }
        return delta(high);
    }

    private double delta(double[] gradient) {
        double variance = 0;
        for (int i = 0; i < gradient.length; i++) {
            for (int j = 0; j < gradient.length; j++) {
                variance += gradient[i] * covariances[i][j] * gradient[j];
            }
        }
        return Math.sqrt(Math.max(0, variance) * jointVariance());
    }

    /**
     * What readings are off by: few say little of their own error, so that what measuring is off by
     * is believed as if four readings had told it.
     */
    private double jointVariance() {
        double measuring = Thickening.MEASURING_SD_MM * Thickening.MEASURING_SD_MM;
        return (squares + BELIEVED_FREEDOM * measuring) / (freedom() + BELIEVED_FREEDOM);
    }

    /** How many standard errors lie between the middle and a probability: Student's t. */
    double errors(double probability) {
        return TDistribution.of(freedom() + BELIEVED_FREEDOM)
                .inverseCumulativeProbability(probability);
    }
}
