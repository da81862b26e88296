package org.ripewood.core.bench;

import java.util.function.BooleanSupplier;

/** Lays out a class day. */
public interface Timetabler {

    /** A guard that never ends the search. */
    BooleanSupplier NEVER = () -> false;

    /**
     * Lays out what has not begun.
     *
     * <p>The answer is always a plan that keeps all rules; jobs that have no place in it are told.
     * The same day gives the same plan as long as {@code stop} does not end the search.
     *
     * @param stop asked from time to time; true ends the search, and the best plan so far counts
     * @throws IllegalArgumentException when what has begun does not belong to the day
     */
    Timetable plan(ClassDay day, Underway underway, BooleanSupplier stop);

    /** Lays out a day on which nothing has begun. */
    default Timetable plan(ClassDay day, BooleanSupplier stop) {
        return plan(day, Underway.notBegun(), stop);
    }
}
