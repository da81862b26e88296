package org.ripewood.materials;

import java.util.Locale;

/** What is in stock, by what has to be known of it. */
public enum StockKind {
    CONTAINER("pieces", true),
    SUBSTRATE("l", false),
    /** A recipe of substrates; there is none of it in stock. */
    MIX("l", false),
    WIRE("g", false),
    TOOL("pieces", true),
    /** Anything else; each has a unit of its own. */
    SUPPLY("", false);

    private final String unit;
    private final boolean whole;

    StockKind(String unit, boolean whole) {
        this.unit = unit;
        this.whole = whole;
    }

    /** What amounts are counted in; empty where each item says so itself. */
    public String unit() {
        return unit;
    }

    /** Whether only whole ones can be counted. */
    boolean whole() {
        return whole;
    }

    /** Such as {@code container}. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
