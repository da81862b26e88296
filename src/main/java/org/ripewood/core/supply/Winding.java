package org.ripewood.core.supply;

/**
 * Wire wound around a branch in even turns.
 *
 * @param branchMm length of the branch to be wired
 * @param acrossMm thickness of the branch
 * @param wireMm thickness of the wire
 */
public record Winding(double branchMm, double acrossMm, double wireMm) {

    public Winding {
        if (!(branchMm > 0 && acrossMm > 0 && branchMm + acrossMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a branch has a length and a thickness above 0 mm, found %s and %s"
                            .formatted(branchMm, acrossMm));
        }
        Gauge.requireMm(wireMm);
    }

    /**
     * Length of wire, mm, when a turn rises by a pitch.
     *
     * <p>Formula: {@code b √(1 + (π (D + d)/p)²)}, the helix of the wire's own middle line. Limits:
     * what the anchor takes comes on top. Source: geometry of the helix.
     *
     * @throws IllegalArgumentException unless the pitch is above 0 and finite
     */
    public double wireMmAtPitch(double pitchMm) {
        if (!(pitchMm > 0 && pitchMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a pitch is above 0 mm, found " + pitchMm);
        }
        return branchMm * Math.hypot(1, turnMm() / pitchMm);
    }

    /** Length of wire, mm, laid at 45° to the branch: the branch's length times √2. */
    public double wireMmAt45Degrees() {
        return wireMmAtPitch(turnMm());
    }

    private double turnMm() {
        return Math.PI * (acrossMm + wireMm);
    }
}
