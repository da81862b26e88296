package org.ripewood.core.agreement;

/** The six intraclass correlations of Shrout and Fleiss 1979, Psychol. Bull. 86:420-428. */
public enum IccForm {
    /** Each thing had judges of its own; how good one judge's score is. */
    ONE_WAY_SINGLE("(1,1)", Design.ONE_WAY, false),
    /** The same judges, picked from many; how good one's score is, severity counted as a fault. */
    TWO_WAY_RANDOM_SINGLE("(2,1)", Design.TWO_WAY_RANDOM, false),
    /** These judges and no others; how good one's score is, severity not counted. */
    TWO_WAY_FIXED_SINGLE("(3,1)", Design.TWO_WAY_FIXED, false),
    /** As {@link #ONE_WAY_SINGLE}, for the mean of all judges. */
    ONE_WAY_MEAN("(1,k)", Design.ONE_WAY, true),
    /** As {@link #TWO_WAY_RANDOM_SINGLE}, for the mean of all judges. */
    TWO_WAY_RANDOM_MEAN("(2,k)", Design.TWO_WAY_RANDOM, true),
    /** As {@link #TWO_WAY_FIXED_SINGLE}, for the mean of all judges. */
    TWO_WAY_FIXED_MEAN("(3,k)", Design.TWO_WAY_FIXED, true);

    enum Design {
        ONE_WAY,
        TWO_WAY_RANDOM,
        TWO_WAY_FIXED
    }

    private final String notation;
    private final Design design;
    private final boolean mean;

    IccForm(String notation, Design design, boolean mean) {
        this.notation = notation;
        this.design = design;
        this.mean = mean;
    }

    /** As in the paper, such as "(2,1)". */
    public String notation() {
        return notation;
    }

    /** Whether it is about the mean of all judges. */
    public boolean isOfMean() {
        return mean;
    }

    Design design() {
        return design;
    }
}
