package org.ripewood.core.growth;

/**
 * How long the reference shoots of a kind of tree grow in a season, in mm: what a shoot is held
 * against when a tree's own past says nothing, or says only that it has always been weak.
 *
 * @param weak no longer than this they are a weak tree's
 * @param fair those of a healthy tree in a pot
 * @param potStrong those of a strong tree in a pot
 * @param groundStrong those of a strong tree in the ground
 */
public record ShootLengths(double weak, double fair, double potStrong, double groundStrong) {

    private static final double WEAK_GRADE = 1;
    private static final double FAIR_GRADE = 2.5;
    private static final double FAIR_GRADE_IN_GROUND = 2;
    private static final double POT_STRONG_GRADE_IN_GROUND = 3;
    private static final double STRONG_GRADE = 4;

    public ShootLengths {
        if (!(weak > 0 && weak < fair && fair < potStrong && potStrong < groundStrong)
                || groundStrong == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "shoots must run 0 < weak < fair < potStrong < groundStrong, found %s, %s, %s, %s"
                            .formatted(weak, fair, potStrong, groundStrong));
        }
    }

    /** What a strong tree makes where it stands. */
    public double strong(boolean inGround) {
        return inGround ? groundStrong : potStrong;
    }

    /**
     * What a healthy tree makes where it stands: of grade 2.5, which is fair in a pot, and halfway
     * between fair and strong in a pot in the ground.
     */
    public double healthy(boolean inGround) {
        return inGround ? (fair + potStrong) / 2 : fair;
    }

    /** All of them longer or shorter by a factor above 0. */
    ShootLengths times(double factor) {
        return new ShootLengths(
                weak * factor, fair * factor, potStrong * factor, groundStrong * factor);
    }

    /** The least of the steps from one length to the next, as a logarithm. */
    double leastStep() {
        return Math.log(
                Math.min(Math.min(fair / weak, potStrong / fair), groundStrong / potStrong));
    }

    /**
     * The grade of a shoot by its length alone, 0 to 4.
     *
     * <p>Formula: straight lines between nothing 0, weak 1, fair 2.5 and strong 4 in a pot; in the
     * ground, where everything grows longer, between nothing 0, weak 1, fair 2, strong in a pot 3
     * and strong in the ground 4. Common practice, no source.
     *
     * @param mm 0 or more
     */
    double grade(double mm, boolean inGround) {
        return inGround
                ? Polyline.along(
                        mm,
                        new double[] {0, weak, fair, potStrong, groundStrong},
                        new double[] {
                            0,
                            WEAK_GRADE,
                            FAIR_GRADE_IN_GROUND,
                            POT_STRONG_GRADE_IN_GROUND,
                            STRONG_GRADE
                        })
                : Polyline.along(
                        mm,
                        new double[] {0, weak, fair, potStrong},
                        new double[] {0, WEAK_GRADE, FAIR_GRADE, STRONG_GRADE});
    }
}
