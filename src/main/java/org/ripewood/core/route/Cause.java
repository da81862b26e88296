package org.ripewood.core.route;

/** What decides the day of a step. The order is the order of telling. */
public enum Cause {
    /** Nothing: it could be done on the first day. */
    NOTHING,
    /** A wait of its own: growth, a reading, a lesson. */
    WAIT,
    /** Another step has to be done first. */
    ORDER,
    /** Time has to go by after another step. */
    LAG,
    /** Another heavy work has taken the growing season. */
    HEAVY,
    /** Quiet is asked for after heavy work. */
    QUIET,
    /** The load of earlier work has to be recovered from. */
    LOAD,
    /** The growing season's share of foliage or roots is used up. */
    DOSE,
    /** The right growth stage has to come round. */
    SEASON
}
