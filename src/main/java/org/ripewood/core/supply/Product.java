package org.ripewood.core.supply;

/**
 * A feed by the figures on its label.
 *
 * @param percentN nitrogen, percent by mass
 * @param percentP2o5 phosphate told as P₂O₅, percent by mass
 * @param percentK2o potash told as K₂O, percent by mass
 */
public record Product(double percentN, double percentP2o5, double percentK2o) {

    /** Of phosphorus in P₂O₅: 2 · 30.974 / 141.94 by atomic masses. */
    static final double P_IN_P2O5 = 0.4364;

    /** Of potassium in K₂O: 2 · 39.098 / 94.196 by atomic masses. */
    static final double K_IN_K2O = 0.8301;

    /**
     * @throws IllegalArgumentException when a percentage is negative, or all are more than 100
     */
    public Product {
        if (!(percentN >= 0
                && percentP2o5 >= 0
                && percentK2o >= 0
                && percentN + percentP2o5 + percentK2o <= 100)) {
            throw new IllegalArgumentException(
                    "expected percentages of 0 and up, 100 together at most, found %s, %s and %s"
                            .formatted(percentN, percentP2o5, percentK2o));
        }
    }

    /** Elemental phosphorus, percent by mass. */
    public double percentP() {
        return P_IN_P2O5 * percentP2o5;
    }

    /** Elemental potassium, percent by mass. */
    public double percentK() {
        return K_IN_K2O * percentK2o;
    }
}
