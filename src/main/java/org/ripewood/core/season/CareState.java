package org.ripewood.core.season;

import java.time.LocalDate;

/** How some care stands on a day. The order is that in which a keeper has to hear of it. */
public enum CareState {
    /** Its days are over and it has not been done. */
    LATE,
    /** Its days are running. */
    DUE,
    /** Its days are still to come. */
    WAITING,
    /** Somebody said it was done. */
    DONE,
    /** Its days are over, or somebody said it was not needed. */
    OVER;

    /**
     * How care nobody has spoken of stands on a day.
     *
     * @param span the days it is in time
     * @param lateUntil last day on which it is still worth doing; the span's last day for care that
     *     is kept up and then ends by itself
     */
    public static CareState of(Span span, LocalDate lateUntil, LocalDate on) {
        if (on.isBefore(span.from())) {
            return WAITING;
        }
        if (span.holds(on)) {
            return DUE;
        }
        return on.isAfter(lateUntil) ? OVER : LATE;
    }
}
