package org.ripewood.people;

import java.time.LocalDate;

/** A group taught together over some time. */
public record Course(long id, long version, String name, LocalDate startsOn, LocalDate endsOn) {

    /** Whether its last day has gone by. */
    public boolean over(LocalDate on) {
        return endsOn.isBefore(on);
    }
}
