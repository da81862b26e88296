package org.ripewood.core.growth;

/**
 * What is believed of how wounds of a kind of tree close at a place.
 *
 * @param rate of one lip, mm a year
 * @param years how far years there differ
 */
public record ClosingBelief(RateBelief rate, YearSpread years) {

    /** Of a place whose years nobody knows. */
    public static ClosingBelief of(RateBelief rate) {
        return new ClosingBelief(rate, YearSpread.UNKNOWN);
    }
}
