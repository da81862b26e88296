package org.ripewood.core.growth;

/**
 * What strength is judged by: the weight of each in the whole, and how soon what was seen of it is
 * half out of date. Both are common practice, no source.
 */
public enum VigourGrade {
    /** A season's shoots are seen once a year. */
    SHOOT(0.35, 365, "the length of its shoots"),
    FOLIAGE(0.25, 120, "the foliage it lacks"),
    /** Colour turns within weeks. */
    COLOUR(0.20, 60, "the colour of its leaves"),
    DIEBACK(0.20, 180, "the share of dead twigs");

    private final double share;
    private final int halfLifeDays;
    private final String words;

    VigourGrade(double share, int halfLifeDays, String words) {
        this.share = share;
        this.halfLifeDays = halfLifeDays;
        this.words = words;
    }

    /** What was looked at, as part of a sentence about a tree. */
    public String words() {
        return words;
    }

    /** Weight in the index, all four adding up to 1. */
    public double share() {
        return share;
    }

    /** Growing days after which a grade counts half. */
    public int halfLifeDays() {
        return halfLifeDays;
    }

    /** What a grade seen so many growing days ago counts for: {@code 2^(−days / half-life)}. */
    double freshness(long daysAgo) {
        return Math.pow(2, -(double) daysAgo / halfLifeDays);
    }
}
