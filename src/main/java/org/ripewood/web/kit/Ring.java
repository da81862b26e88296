package org.ripewood.web.kit;

import java.util.Locale;

/**
 * The closure ring: how far a criterion is met, drawn as callus closing over a wound. The gap is at
 * the top and closes from both sides; where nobody has measured, the gap is dashed.
 *
 * @param percent of the ring that is closed, 0 to 100
 * @param words said to those who do not see it
 */
public record Ring(int percent, boolean measured, String words) {

    /** A ring that only just misses is drawn open all the same. */
    private static final int MOST_WHILE_OPEN = 94;

    static Ring of(String truth, double howFar) {
        var percent = (int) Math.floor(100 * Math.max(0, Math.min(1, howFar)));
        return switch (truth) {
            case "YES" -> new Ring(100, true, "met");
            case "NO" ->
                    new Ring(
                            Math.min(percent, MOST_WHILE_OPEN),
                            true,
                            "not met, %d %% of the way".formatted(percent));
            default -> new Ring(Math.min(percent, MOST_WHILE_OPEN), false, "not known");
        };
    }

    /** An open wound, by the share of its first width that has closed. */
    static Ring ofClosure(double share) {
        var percent = (int) Math.floor(100 * share);
        return new Ring(
                Math.min(percent, MOST_WHILE_OPEN), true, "%d %% closed".formatted(percent));
    }

    public boolean closed() {
        return measured && percent == 100;
    }

    /** Degrees by which the arc is turned so that its gap lies at the top. */
    public String turn() {
        return String.format(Locale.ROOT, "%.1f", -90 + (100 - percent) * 1.8);
    }
}
