package org.ripewood.core.growth;

/**
 * How strong a tree is, 0 to 100, by grades of 0 (poor) to 4 (full).
 *
 * <p>The index is the lower of two numbers: 25 times the weighted mean of the grades, and what the
 * poorest grade allows, {@code 10 + 22.5 × grade}. By the mean alone a tree that hardly grows would
 * pass for one of medium strength as long as it is green. The second number follows the levels of
 * the school's rubric of vigour: 10 failing, 32 weak, 55 fair. Common practice, no source.
 */
public final class VigourIndex {

    /** The most a tree may be given of which a grade is not known. */
    public static final double MOST_WITH_GAPS = 74;

    static final double HIGHEST_GRADE = 4;
    private static final double PER_GRADE = 100 / HIGHEST_GRADE;
    private static final double ALLOWED_BY_NOTHING = 10;
    private static final double ALLOWED_PER_GRADE = 22.5;

    private VigourIndex() {}

    /**
     * The index.
     *
     * @param meanGrade weighted mean of the grades, 0 to 4
     * @param poorestGrade the least of them, 0 to 4
     * @return 0 to 100
     */
    static double of(double meanGrade, double poorestGrade) {
        requireGrade("all", meanGrade);
        requireGrade("the poorest", poorestGrade);
        return Math.min(PER_GRADE * meanGrade, allowedBy(poorestGrade));
    }

    /**
     * The most a tree may be given whose poorest grade this is: {@code 10 + 22.5 × grade}.
     *
     * @param poorestGrade 0 to 4
     */
    static double allowedBy(double poorestGrade) {
        return ALLOWED_BY_NOTHING + ALLOWED_PER_GRADE * poorestGrade;
    }

    /**
     * Grade of missing foliage: 4 less the code of its class, {@link DefoliationClass#ofLoss}.
     *
     * @param lossPercent leaves or needles lost, 0 to 100
     * @throws IllegalArgumentException outside, or NaN
     */
    public static int lossGrade(double lossPercent) {
        return (int) HIGHEST_GRADE - DefoliationClass.ofLoss(lossPercent).code();
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

    static void requireGrade(String name, double grade) {
        if (!(grade >= 0 && grade <= HIGHEST_GRADE)) {
            throw new IllegalArgumentException(
                    "the grade of %s lies between 0 and 4, found %s".formatted(name, grade));
        }
    }
}
