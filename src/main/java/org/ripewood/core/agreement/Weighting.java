package org.ripewood.core.agreement;

import java.util.List;

/** How badly two grades disagree; a weighted kappa is always told together with it. */
public sealed interface Weighting {

    /** Any two different grades disagree alike: for grades without an order. */
    record Unweighted() implements Weighting {
        @Override
        public double disagreement(int one, int other) {
            return one == other ? 0 : 1;
        }
    }

    /** Twice as many grades apart is twice as bad. */
    record Linear() implements Weighting {
        @Override
        public double disagreement(int one, int other) {
            return Math.abs((double) one - other);
        }
    }

    /** Twice as many grades apart is four times as bad. */
    record Quadratic() implements Weighting {
        @Override
        public double disagreement(int one, int other) {
            double apart = (double) one - other;
            return apart * apart;
        }
    }

    /**
     * A school's own.
     *
     * @param disagreements rows the first judge's grade, columns the second's: 0 on the diagonal,
     *     elsewhere 0 to 1e100, in any unit; it need not be symmetric
     */
    record Given(List<List<Double>> disagreements) implements Weighting {

        private static final double MOST = 1e100;

        /**
         * @throws IllegalArgumentException when it is not square, a weight is negative, above 1e100
         *     or NaN, the diagonal is not 0, or all is 0
         */
        public Given {
            disagreements = disagreements.stream().map(List::copyOf).toList();
            boolean any = false;
            for (int one = 0; one < disagreements.size(); one++) {
                var row = disagreements.get(one);
                if (row.size() != disagreements.size()) {
                    throw new IllegalArgumentException(
                            "expected %d weights in row %d, found %d"
                                    .formatted(disagreements.size(), one, row.size()));
                }
                for (int other = 0; other < row.size(); other++) {
                    double weight = row.get(other);
                    if (!(weight >= 0 && weight <= (one == other ? 0 : MOST))) {
                        throw new IllegalArgumentException(
                                "expected 0 on the diagonal and 0 to 1e100 elsewhere, found %s for grades %d and %d"
                                        .formatted(weight, one, other));
                    }
                    any |= weight > 0;
                }
            }
            if (!any) {
                throw new IllegalArgumentException("expected a weight above 0, found none");
            }
        }

        @Override
        public double disagreement(int one, int other) {
            return disagreements.get(one).get(other);
        }
    }

    /**
     * The disagreement of two grades, 0 for the same.
     *
     * @throws IndexOutOfBoundsException for a grade that given weights do not have
     */
    double disagreement(int one, int other);
}
