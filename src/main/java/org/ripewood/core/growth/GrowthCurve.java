package org.ripewood.core.growth;

/** Forms a girth follows as it grows towards a size it does not exceed. */
enum GrowthCurve {
    /** {@code A / (1 + e^((m − x)/s))}, parameters A, m, s. */
    LOGISTIC(3) {
        @Override
        double at(double x, double[] p) {
            return p[0] / (1 + Math.exp((p[1] - x) / p[2]));
        }

        @Override
        double[] gradient(double x, double[] p) {
            double share = 1 / (1 + Math.exp((p[1] - x) / p[2]));
            double slope = p[0] * share * (1 - share) / p[2];
            return new double[] {share, -slope, -slope * (x - p[1]) / p[2]};
        }

        @Override
        double[] start(double firstY, double lastY, double span) {
            double asymptote = 1.1 * lastY;
            double scale = span / 4;
            double middle = scale * Math.log(asymptote / Math.max(firstY, 0.01 * lastY) - 1);
            return new double[] {asymptote, middle, scale};
        }
    },

    /**
     * Chapman and Richards, {@code A (1 − c e^(−k x))^p}, parameters A, c, k, p; the c stands for
     * an age nobody knows. Richards 1959, J. Exp. Bot. 10:290-301.
     */
    CHAPMAN_RICHARDS(4) {
        @Override
        double at(double x, double[] p) {
            return p[0] * Math.pow(grown(x, p), p[3]);
        }

        @Override
        double[] gradient(double x, double[] p) {
            double left = Math.exp(-p[2] * x);
            double grown = grown(x, p);
            double share = Math.pow(grown, p[3]);
            double slope = p[0] * p[3] * share / grown;
            return new double[] {
                share, -slope * left, slope * p[1] * x * left, p[0] * share * Math.log(grown)
            };
        }

        @Override
        double[] start(double firstY, double lastY, double span) {
            return new double[] {1.2 * lastY, 1 - firstY / (1.2 * lastY), 1.5 / span, 1};
        }
    },

    /** The same with p = 1: growth slows down from the start (Mitscherlich). */
    SLOWING(3) {
        @Override
        double at(double x, double[] p) {
            return p[0] * (1 - p[1] * Math.exp(-p[2] * x));
        }

        @Override
        double[] gradient(double x, double[] p) {
            double left = Math.exp(-p[2] * x);
            return new double[] {1 - p[1] * left, -p[0] * left, p[0] * p[1] * x * left};
        }

        @Override
        double[] start(double firstY, double lastY, double span) {
            return new double[] {1.2 * lastY, 1 - firstY / (1.2 * lastY), 1.5 / span};
        }
    };

    final int parameters;

    GrowthCurve(int parameters) {
        this.parameters = parameters;
    }

    abstract double at(double x, double[] p);

    /** What has grown of 1 by Chapman and Richards before the power; never quite 0. */
    private static double grown(double x, double[] p) {
        return Math.max(1e-12, 1 - p[1] * Math.exp(-p[2] * x));
    }

    /**
     * With fewer readings the curve is not tried: two over for three parameters, three for four.
     */
    int leastReadings() {
        return parameters == 3 ? 5 : 7;
    }

    /** Parameters to set out from, x counted from the first reading. */
    abstract double[] start(double firstY, double lastY, double span);

    /** Change of the value with each parameter. */
    abstract double[] gradient(double x, double[] p);
}
