package org.ripewood.core.growth;

/**
 * How strong a tree is, from four grades of 0 (poor) to 4 (full).
 *
 * @param shoot this season's growth against the tree's own earlier seasons
 * @param foliage 4 less the class of defoliation
 * @param colour 4 normal to 0 strongly yellow
 * @param dieback 4 no dead twigs to 0 a third or more
 */
public record VigourIndex(double shoot, double foliage, double colour, double dieback) {

    private static final double HIGHEST_GRADE = 4;
    private static final double PER_GRADE = 100 / HIGHEST_GRADE;

    public VigourIndex {
        requireGrade("shoot", shoot);
        requireGrade("foliage", foliage);
        requireGrade("colour", colour);
        requireGrade("dieback", dieback);
    }

    /**
     * Grades what was measured.
     *
     * <p>Formula: shoot by {@link #shootGrade}; foliage 4 less the code of {@link
     * DefoliationClass#ofLoss}; colour as it was graded; dieback by {@link #diebackGrade}.
     *
     * <p>Limits: a pinched tree grows short shoots by design; the ratio is to be taken on shoots
     * left alone. Source: common practice, no source; foliage classes as named there.
     *
     * @param shootRatio this season's reference shoot over the mean of the last three, 0 or more
     * @param lossPercent leaves or needles lost, 0 to 100
     * @param colourGrade 0 to 4, fractions allowed
     * @param diebackPercent twigs dead, 0 to 100
     * @throws IllegalArgumentException when any is NaN or out of its range
     */
    public static VigourIndex graded(
            double shootRatio, double lossPercent, double colourGrade, double diebackPercent) {
        return new VigourIndex(
                shootGrade(shootRatio),
                HIGHEST_GRADE - DefoliationClass.ofLoss(lossPercent).code(),
                colourGrade,
                diebackGrade(diebackPercent));
    }

    /**
     * Grade of a shoot ratio: below 0.4 is 0, below 0.7 is 1, below 0.9 is 2, below 1.2 is 3, from
     * there 4. Common practice, no source.
     *
     * @throws IllegalArgumentException below 0, or NaN
     */
    public static int shootGrade(double shootRatio) {
        if (!(shootRatio >= 0)) {
            throw new IllegalArgumentException("a ratio is not negative, found " + shootRatio);
        }
        if (shootRatio < 0.4) {
            return 0;
        }
        if (shootRatio < 0.7) {
            return 1;
        }
        if (shootRatio < 0.9) {
            return 2;
        }
        return shootRatio < 1.2 ? 3 : 4;
    }

    /**
     * Grade of dead twigs: none is 4, below 5 % is 3, below 15 % is 2, below 30 % is 1, from there
     * 0. Common practice, no source.
     *
     * @throws IllegalArgumentException outside 0 to 100, or NaN
     */
    public static int diebackGrade(double diebackPercent) {
        if (!(diebackPercent >= 0 && diebackPercent <= 100)) {
            throw new IllegalArgumentException(
                    "dieback lies between 0 and 100 percent, found " + diebackPercent);
        }
        if (diebackPercent == 0) {
            return 4;
        }
        if (diebackPercent < 5) {
            return 3;
        }
        if (diebackPercent < 15) {
            return 2;
        }
        return diebackPercent < 30 ? 1 : 0;
    }

    /** One of the grades. */
    public double of(VigourGrade grade) {
        return switch (grade) {
            case SHOOT -> shoot;
            case FOLIAGE -> foliage;
            case COLOUR -> colour;
            case DIEBACK -> dieback;
        };
    }

    /**
     * The weighted mean of the grades, 0 to 4.
     *
     * <p>Formula: {@code 0.35 shoot + 0.25 foliage + 0.20 colour + 0.20 dieback}. Common practice,
     * no source.
     */
    public double score() {
        return VigourGrade.SHOOT.share() * shoot
                + VigourGrade.FOLIAGE.share() * foliage
                + VigourGrade.COLOUR.share() * colour
                + VigourGrade.DIEBACK.share() * dieback;
    }

    /** The index, 0 to 100: 25 times the {@link #score}. */
    public double value() {
        return Math.min(100, PER_GRADE * score());
    }

    private static void requireGrade(String name, double grade) {
        if (!(grade >= 0 && grade <= HIGHEST_GRADE)) {
            throw new IllegalArgumentException(
                    "the grade of %s lies between 0 and 4, found %s".formatted(name, grade));
        }
    }
}
