package org.ripewood.web.kit;

import io.quarkus.qute.TemplateGlobal;

/**
 * The closure ring: how far a criterion is met, drawn as callus closing over a wound seen from the
 * front; where nobody has measured, its edges are dashed.
 *
 * @param percent of the ring that is closed, 0 to 100
 * @param words said to those who do not see it
 */
public record Ring(int percent, boolean measured, String words) {

    /** A ring that only just misses is drawn open all the same. */
    private static final int MOST_WHILE_OPEN = 94;

    /** Of what is still to be seen, for templates. */
    @TemplateGlobal
    static Ring ringOpen() {
        return of("UNKNOWN", 0);
    }

    /** Of what is done, for templates. */
    @TemplateGlobal
    static Ring ringDone() {
        return of("YES", 1);
    }

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

    /** Path of the callus. */
    public String lip() {
        return CallusLip.of(percent).lip();
    }

    /** Path of the grain of the bare wood; of the seam once it is closed. */
    public String grain() {
        return CallusLip.of(percent).grain();
    }
}
