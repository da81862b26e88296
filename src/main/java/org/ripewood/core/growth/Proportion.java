package org.ripewood.core.growth;

/**
 * One length of a tree against another: branch against trunk, height against base, base against the
 * planned base.
 *
 * <p>Limits and sources: cutting off a branch above 0.39 (live oak) to 0.59 (red maple) of the
 * trunk discoloured the trunk severely (Eisner, Gilman and Grabosky 2002, J. Arboric.
 * 28(2):99-105); height to base of about 6 and branch to trunk of a third are common practice, no
 * source.
 */
public final class Proportion {

    private Proportion() {}

    /**
     * How much one length is of another.
     *
     * <p>Formula: {@code part / whole}. Both in the same unit.
     *
     * <p>Edge cases: NaN when the whole is not above 0, because nothing can be said then.
     *
     * @throws IllegalArgumentException when the part is negative or NaN
     */
    public static double of(double part, double whole) {
        if (!(part >= 0)) {
            throw new IllegalArgumentException("a length is not negative, found " + part);
        }
        return whole > 0 ? part / whole : Double.NaN;
    }
}
