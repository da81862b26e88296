package org.ripewood.platform;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** A clock that stands still, hung up where a moment says. */
public final class TodayAt {

    private TodayAt() {}

    /**
     * The service's clock at a moment such as {@code 2026-11-29T21:50-11:00}, whose offset is the
     * server's; the school has no ground of its own.
     */
    public static Today moment(String moment) {
        var at = OffsetDateTime.parse(moment);
        return new Today(Clock.fixed(at.toInstant(), at.getOffset()), Optional.empty(), List::of);
    }
}
