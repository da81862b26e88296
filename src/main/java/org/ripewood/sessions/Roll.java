package org.ripewood.sessions;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Who came to a class.
 *
 * @param version of the session; a change is made to it
 * @param open whether it may be marked: the day has come and the class was not called off
 * @param lines one for each student who was enrolled
 */
public record Roll(long sessionId, long version, LocalDate heldOn, boolean open, List<Line> lines) {

    public Roll {
        lines = List.copyOf(lines);
    }

    /**
     * A student's line.
     *
     * @param mark null while nobody has said anything
     */
    public record Line(long personId, @Nullable Mark mark) {}

    /** What was said, by whom and when. */
    public record Mark(Presence presence, long byId, Instant at) {}

    /** Whether anybody is marked. */
    public boolean begun() {
        return lines.stream().anyMatch(line -> line.mark() != null);
    }
}
