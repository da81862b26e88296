package org.ripewood.trees;

import java.time.Instant;

/**
 * What was said of a tree until somebody said something else.
 *
 * @param saidAt when it was said, which somebody else's words then replaced
 */
public record EarlierWords(Kind kind, String words, long byId, Instant saidAt) {

    /** What the words are about. */
    public enum Kind {
        ORIGIN("where it came from"),
        NOTE("note");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}
