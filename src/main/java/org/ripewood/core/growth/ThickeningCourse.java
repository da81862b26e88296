package org.ripewood.core.growth;

import static java.util.Comparator.comparingDouble;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/** A diameter's way through growth-time in years, learnt from readings. */
sealed interface ThickeningCourse {

    /** From so many days with readings on a curve is tried. */
    int CURVE_FROM = 5;

    /** A belief is never surer than this, mm of radius a year. */
    double LEAST_PRIOR_SD_MM = 0.05;

    /** Nothing is looked for beyond so many mean years after the first reading. */
    double FURTHEST_YEARS = 100;

    /** The years by which the diameter has been reached with a probability, or infinity. */
    double reaching(double diameterMm, double probability);

    /** The diameter not exceeded with a probability. */
    double diameterAt(double years, double probability);

    Increment increment();

    Optional<GrowthCurve> curve();

    /** The form the readings carry best; x grows from 0. */
    static ThickeningCourse of(double[] x, double[] y, int days, Increment prior) {
        if (days < CURVE_FROM) {
            return new Straight(x, y, prior);
        }
        var line = LineFit.of(x, y);
        return Stream.of(GrowthCurve.values())
                .flatMap(curve -> CurveFit.of(curve, x, y).stream())
                .min(comparingDouble(CurveFit::aicc).thenComparingDouble(CurveFit::squares))
                .filter(line::isOutdoneBy)
                .<ThickeningCourse>map(fit -> new Bent(fit, x[x.length - 1]))
                .orElseGet(() -> new Straight(x, y, prior));
    }

    /** A straight line but for the seasons, with the belief about its slope; a year is 1. */
    record Straight(SteadyRate falling) implements ThickeningCourse {

        Straight(double[] x, double[] y, Increment prior) {
            this(
                    new SteadyRate(
                            x,
                            Arrays.stream(y).map(diameter -> -diameter).toArray(),
                            2 * prior.radialMm(),
                            2 * Math.max(LEAST_PRIOR_SD_MM, prior.sdMm()),
                            Thickening.MEASURING_SD_MM,
                            new SteadyRate.Seasons(
                                    ClosurePriors.SEASON_SPREAD,
                                    2 * Thickening.IN_TRAINING.radialMm(),
                                    1)));
        }

        @Override
        public double reaching(double diameterMm, double probability) {
            return falling.reaching(-diameterMm, probability);
        }

        @Override
        public double diameterAt(double years, double probability) {
            return -falling.widthAt(years, 1 - probability);
        }

        @Override
        public Increment increment() {
            return new Increment(falling.rate() / 2, falling.rateSd() / 2);
        }

        @Override
        public Optional<GrowthCurve> curve() {
            return Optional.empty();
        }
    }

    /** A curve; beyond the last reading a season's gain may differ from the curve's. */
    record Bent(CurveFit fit, double lastX) implements ThickeningCourse {

        private static final double STEP_YEARS = 0.25;
        private static final double EXACT_TO = 1e-4;

        @Override
        public double reaching(double diameterMm, double probability) {
            // The diameter that is exceeded with the probability has to reach the one asked for.
            double errors = fit.errors(1 - probability);
            double before = 0;
            for (double x = 0; x < FURTHEST_YEARS; x += STEP_YEARS) {
                if (withErrors(x, errors) >= diameterMm) {
                    return x == 0
                            ? 0
                            : Crossing.of(
                                    at -> withErrors(at, errors) - diameterMm, before, x, EXACT_TO);
                }
                before = x;
            }
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double diameterAt(double years, double probability) {
            return withErrors(years, fit.errors(probability));
        }

        private double withErrors(double years, double errors) {
            double ahead = Math.max(0, fit.rise(lastX, Math.max(lastX, years)));
            double error = Math.hypot(fit.errorAt(years), ClosurePriors.SEASON_SPREAD * ahead);
            return fit.at(years) + errors * error;
        }

        @Override
        public Increment increment() {
            return new Increment(
                    Math.max(0, fit.rise(lastX, lastX + 1)) / 2,
                    fit.errorOfRise(lastX, lastX + 1) / 2);
        }

        @Override
        public Optional<GrowthCurve> curve() {
            return Optional.of(fit.curve());
        }
    }
}
