package org.ripewood.classday;

import java.time.LocalTime;
import java.util.List;
import org.ripewood.core.bench.Job;
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

    /** The whole step a minute lies in. */
    static int down(int minute) {
        return minute / Job.STEP_MINUTES * Job.STEP_MINUTES;
    }

    /** The end of the step a minute lies in, itself where one ends there. */
    static int up(int minute) {
        return down(minute + Job.STEP_MINUTES - 1);
    }

    /** The whole steps within the hours of a class, in which work is laid out; none too few. */
    static Span steps(Span hours) {
        int from = up(hours.fromMinute());
        int to = down(hours.toMinute());
        return from < to ? new Span(from, to) : hours;
    }

    /** The steps a break takes something of. */
    static List<Span> around(List<Span> breaks) {
        return breaks.stream()
                .map(one -> new Span(down(one.fromMinute()), up(one.toMinute())))
                .toList();
    }
}
