package org.ripewood.core.growth;

/**
 * How fast bark of a kind of tree rolls over a wound.
 *
 * <p>The rates are those of one lip on a tree in training that is well (vigour {@link #AT_VIGOUR}),
 * in its own place's mean year. Landscape and forest trees come to 3.0–8.7 mm a year (widths that
 * closed in one season, Neely 1979, J. Arboric. 5(6):135-140; 30–40 mm in 3–5 years in a German
 * green-pruning trial of maple, beech, oak and ash); a tree in a container thickens more slowly, so
 * its lip is given about six tenths of that. The order of the kinds and the share are common
 * practice, no source. The spread inside one species is large (Neely 1988, J. Arboric.
 * 14(10):250-254), hence {@link #SPREAD}.
 */
public enum CallusPace {
    POOR(1.2),
    SLOW(2.0),
    MODERATE(3.5),
    GOOD(5.0),
    VERY_GOOD(6.5);

    /** The vigour index the rates hold for. */
    public static final double AT_VIGOUR = 75;

    /** Standard deviation between trees of a kind, as a share of the mean rate. */
    public static final double SPREAD = 0.4;

    private final double lipMmPerYear;

    CallusPace(double lipMmPerYear) {
        this.lipMmPerYear = lipMmPerYear;
    }

    /** What one lip advances in a year, mm. */
    public double lipMmPerYear() {
        return lipMmPerYear;
    }

    /** What is believed of this kind before the school has closed a wound on it. */
    public RateBelief belief() {
        return RateBelief.of(lipMmPerYear, SPREAD * lipMmPerYear);
    }
}
