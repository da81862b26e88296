package org.ripewood.web.kit;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was typed into a form beside what stands by now, since somebody changed it meanwhile.
 *
 * @param who changed it last, by name; empty when that is not known or not the reader's to know
 * @param at when that was; null when it is not known
 */
public record EditConflict(List<Line> lines, String who, @Nullable Instant at) {

    public EditConflict {
        lines = List.copyOf(lines);
    }

    /** One field: what was typed, and what stands there now. */
    public record Line(String label, String typed, String now) {

        public boolean differs() {
            return !typed.equals(now);
        }
    }
}
