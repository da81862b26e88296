package org.ripewood.core.progress;

/**
 * How much of the foliage or of the roots a technique takes.
 *
 * @param typicalShare what it usually takes, 0 to 1 of the whole
 * @param limitShare most that may go in one growing season, this work included
 */
public record DoseRule(Kind kind, double typicalShare, double limitShare) {

    /** What is taken away. */
    public enum Kind {
        FOLIAGE,
        ROOT
    }

    public DoseRule {
        if (!(typicalShare >= 0 && typicalShare <= limitShare && limitShare <= 1)) {
            throw new IllegalArgumentException(
                    "shares must run 0 <= typical <= limit <= 1, found %s and %s"
                            .formatted(typicalShare, limitShare));
        }
    }
}
