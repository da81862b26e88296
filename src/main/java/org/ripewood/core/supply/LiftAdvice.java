package org.ripewood.core.supply;

import org.jspecify.annotations.Nullable;

/**
 * How to move a weight.
 *
 * @param kg the weight
 * @param recommendedKg the limit recommended for this lift; 0 where it is none for hands
 * @param index weight over limit; null where the limit is 0
 */
public record LiftAdvice(double kg, double recommendedKg, @Nullable Double index, Way way) {

    /** Said with every advice. */
    public static final String LOCAL_RULES =
            "Advice and no permission: the rules of your country and school decide, and so does the"
                    + " person who lifts.";

    /** How. */
    public enum Way {
        ALONE("One person can lift this with bent knees and a straight back, close to the body."),
        TWO_OR_TROLLEY("Two people or a trolley."),
        TROLLEY("A trolley or a hoist; too much for two pairs of hands.");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Formula: index = weight / limit; up to 1 alone, above 1 two people or a trolley, and where
     * half the weight is still above the limit, or there is none, a trolley. Limits: the equation
     * speaks of one person; that two carry half each is common practice, no source. An index above
     * 1 raises the risk for some (NIOSH publication 94-110).
     */
    static LiftAdvice of(double kg, double recommendedKg) {
        if (!(kg > 0 && kg < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a weight is above 0 kg, found " + kg);
        }
        if (recommendedKg == 0) {
            return new LiftAdvice(kg, 0, null, Way.TROLLEY);
        }
        double index = kg / recommendedKg;
        var way = index <= 1 ? Way.ALONE : index <= 2 ? Way.TWO_OR_TROLLEY : Way.TROLLEY;
        return new LiftAdvice(kg, recommendedKg, index, way);
    }
}
