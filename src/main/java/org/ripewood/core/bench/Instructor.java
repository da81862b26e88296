package org.ripewood.core.bench;

import java.util.List;

/**
 * Somebody who teaches on the day, at one bench at a time.
 *
 * @param id names the instructor
 * @param available when the instructor is there; overlapping spans count once
 * @param breaks when the instructor has a break of their own
 */
public record Instructor(String id, List<Span> available, List<Span> breaks) {

    public Instructor {
        JobIds.require("an instructor", id);
        available = List.copyOf(available);
        breaks = List.copyOf(breaks);
    }

    boolean teachesAt(int minute) {
        return available.stream().anyMatch(span -> span.holds(minute))
                && breaks.stream().noneMatch(span -> span.holds(minute));
    }
}
