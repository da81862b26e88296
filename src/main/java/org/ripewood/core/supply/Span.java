package org.ripewood.core.supply;

/**
 * A quantity known to lie between two values, which may be the same.
 *
 * @param low at least 0
 * @param high at least {@code low}
 */
public record Span(double low, double high) {

    /**
     * @throws IllegalArgumentException unless {@code 0 ≤ low ≤ high}, both finite
     */
    public Span {
        if (!(low >= 0 && low <= high && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "expected 0 <= low <= high, found %s and %s".formatted(low, high));
        }
    }

    public static Span exactly(double value) {
        return new Span(value, value);
    }

    Span plus(Span other) {
        return new Span(low + other.low, high + other.high);
    }

    Span times(double factor) {
        return new Span(low * factor, high * factor);
    }

    /** Half way between both. */
    public double middle() {
        return low + (high - low) / 2;
    }

    /** Whether both values are the same. */
    public boolean exact() {
        return low == high;
    }

    /** Both values as people write them, or the one they are. */
    public String words() {
        var from = Plain.number(low);
        var to = Plain.number(high);
        return from.equals(to) ? from : from + " to " + to;
    }
}
