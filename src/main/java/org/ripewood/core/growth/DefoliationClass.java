package org.ripewood.core.growth;

/** How much of the foliage a tree lacks, in the five classes of forest monitoring. */
public enum DefoliationClass {
    NONE(0),
    SLIGHT(1),
    MODERATE(2),
    SEVERE(3),
    DEAD(4);

    private final int code;

    DefoliationClass(int code) {
        this.code = code;
    }

    /** The class's number, 0 for none to 4 for dead. */
    public int code() {
        return code;
    }

    /**
     * The class of a share of leaves or needles lost, against a healthy tree of the place.
     *
     * <p>Formula: up to 10 none, up to 25 slight, up to 60 moderate, below 100 severe, 100 dead;
     * the upper bound belongs to the lower class.
     *
     * <p>Edge cases: 100 alone is dead, 99.9 is severe.
     *
     * <p>Source: ICP Forests classes as given by Eurostat, Glossary: Degree of defoliation.
     *
     * @param lossPercent share lost, 0 to 100
     * @throws IllegalArgumentException outside 0 to 100, or NaN
     */
    public static DefoliationClass ofLoss(double lossPercent) {
        if (!(lossPercent >= 0 && lossPercent <= 100)) {
            throw new IllegalArgumentException(
                    "a loss lies between 0 and 100 percent, found " + lossPercent);
        }
        if (lossPercent <= 10) {
            return NONE;
        }
        if (lossPercent <= 25) {
            return SLIGHT;
        }
        if (lossPercent <= 60) {
            return MODERATE;
        }
        return lossPercent < 100 ? SEVERE : DEAD;
    }
}
