package org.ripewood.sessions;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * Where clocks are put forward or back. Sessions are held by the clock: one at ten stays at ten on
 * both sides of the change.
 */
public final class ClockChanges {

    private ClockChanges() {}

    /**
     * The days on which the clocks of a zone change, from one day up to and including another,
     * soonest first.
     */
    public static List<LocalDate> between(ZoneId zone, LocalDate from, LocalDate until) {
        var days = new ArrayList<LocalDate>();
        var end = until.plusDays(1).atStartOfDay(zone).toInstant();
        // a moment earlier, or a change at midnight of the first day would be left out
        Instant before = from.atStartOfDay(zone).toInstant().minusNanos(1);
        var next = zone.getRules().nextTransition(before);
        while (next != null && next.getInstant().isBefore(end)) {
            days.add(next.getDateTimeBefore().toLocalDate());
            next = zone.getRules().nextTransition(next.getInstant());
        }
        return List.copyOf(days);
    }

    /** Whether the clocks of a zone leave that time out on that day. */
    public static boolean skips(ZoneId zone, LocalDate day, LocalTime time) {
        return zone.getRules().getValidOffsets(LocalDateTime.of(day, time)).isEmpty();
    }
}
