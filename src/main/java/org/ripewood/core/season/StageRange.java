package org.ripewood.core.season;

import java.util.Locale;

/**
 * An inclusive range of BBCH growth stages, 00 to 99; it may run over winter.
 *
 * <p>{@code 91-03} holds 91 to 99 and 00 to 03. Codes 51 to 89 belong to flower and fruit, which
 * run beside the leaves: a range that starts there is read on the flower track.
 *
 * <p>Source of the scale: Meier 2001, BBCH Monograph, 2nd edition.
 *
 * @param from first stage, 0 to 99
 * @param to last stage, 0 to 99; lower than {@code from} when the range runs over winter
 */
public record StageRange(int from, int to) {

    /** First code of the flower and fruit track. */
    public static final int FIRST_FLOWER_STAGE = 51;

    /** Last code of the flower and fruit track. */
    public static final int LAST_FLOWER_STAGE = 89;

    public StageRange {
        if (from < 0 || from > 99 || to < 0 || to > 99) {
            throw new IllegalArgumentException(
                    "BBCH stages run from 00 to 99, found %d to %d".formatted(from, to));
        }
    }

    /**
     * Reads {@code "91-03"}.
     *
     * @throws IllegalArgumentException when the text is not two two-digit stages joined by a hyphen
     */
    public static StageRange parse(String text) {
        if (!text.matches("\\d{2}-\\d{2}")) {
            throw new IllegalArgumentException(
                    "expected two BBCH stages such as \"91-03\", found \"%s\"".formatted(text));
        }
        return new StageRange(
                Integer.parseInt(text.substring(0, 2)), Integer.parseInt(text.substring(3)));
    }

    /** Whether the range holds this stage; a range over winter holds both its ends of the year. */
    public boolean holds(int stage) {
        return from <= to ? stage >= from && stage <= to : stage >= from || stage <= to;
    }

    /** Whether the range speaks of flowers and fruit, not of buds, leaves and shoots. */
    public boolean onFlowerTrack() {
        return from >= FIRST_FLOWER_STAGE && from <= LAST_FLOWER_STAGE;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%02d-%02d", from, to);
    }
}
