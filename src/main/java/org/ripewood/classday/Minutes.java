package org.ripewood.classday;

import java.time.LocalTime;
import org.ripewood.core.bench.Span;
import org.ripewood.sessions.Session;

/** Times of the day as minutes since midnight, in which timetables are reckoned. */
final class Minutes {

    private static final int HOUR = 60;

    private Minutes() {}

    static int of(LocalTime time) {
        return time.getHour() * HOUR + time.getMinute();
    }

    static LocalTime time(int minute) {
        return LocalTime.of(minute / HOUR % 24, minute % HOUR);
    }

    static Span hours(Session session) {
        return new Span(of(session.startsAt()), of(session.endsAt()));
    }
}
