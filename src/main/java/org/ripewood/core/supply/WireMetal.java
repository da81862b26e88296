package org.ripewood.core.supply;

/** What wire is drawn from. Densities from memory; thickness against branch: common practice. */
public enum WireMetal {
    ALUMINIUM(2.70, 0.30, 0.40, 1.0 / 3),
    COPPER(8.96, 0.25, 1.0 / 3, 7.0 / 24);

    private final double gramsPerCm3;
    private final double leastShare;
    private final double mostShare;
    private final double usualShare;

    WireMetal(double gramsPerCm3, double leastShare, double mostShare, double usualShare) {
        this.gramsPerCm3 = gramsPerCm3;
        this.leastShare = leastShare;
        this.mostShare = mostShare;
        this.usualShare = usualShare;
    }

    /** Thinnest wire that holds, as a share of the branch's thickness. */
    double leastShare() {
        return leastShare;
    }

    /** Thickest wire that is still easy to lay on. */
    double mostShare() {
        return mostShare;
    }

    /** What is reached for first. */
    double usualShare() {
        return usualShare;
    }

    /**
     * Mass of a metre of wire.
     *
     * <p>Formula: {@code density · π/4 · d²}. Shapes and units: mm in, grams out. Limits: bare
     * wire; a coat adds a little.
     *
     * @throws IllegalArgumentException unless the thickness is above 0 and finite
     */
    public double gramsPerMetre(double wireMm) {
        Gauge.requireMm(wireMm);
        return gramsPerCm3 * Math.PI / 4 * wireMm * wireMm;
    }

    /**
     * How long a roll of so many grams is, metres.
     *
     * @throws IllegalArgumentException when the mass is negative or not finite
     */
    public double metresIn(double grams, double wireMm) {
        if (!(grams >= 0 && grams < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a roll weighs at least 0 g, found " + grams);
        }
        return grams / gramsPerMetre(wireMm);
    }
}
