package org.ripewood.life;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened to a tree, or was seen of it.
 *
 * @param title what, in words
 * @param detail more of it, in words; empty for nothing
 * @param id of the photo, step, wound or other row it is told from; null when it is told from the
 *     tree itself
 * @param mm for wounds how wide open, for the trunk how thick; null for everything else
 */
public record LifeEntry(
        LocalDate on,
        Kind kind,
        String title,
        String detail,
        @Nullable Long id,
        @Nullable Double mm) {

    /** What it is about. */
    public enum Kind {
        ARRIVED("Arrival"),
        LEFT("Departure"),
        STAGE("Stage"),
        STEP("Step"),
        WORK("Work"),
        CONTAINER("Container"),
        WOUND("Wound"),
        TRUNK("Trunk"),
        PHOTO("Photo");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Whether it is a step that an instructor signed off. */
    public boolean signedOff() {
        return kind == Kind.STEP && detail.equals(LifeEntries.SIGNED_OFF);
    }
}
