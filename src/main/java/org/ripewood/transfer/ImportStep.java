package org.ripewood.transfer;

import java.time.LocalDate;

/**
 * One thing to be entered.
 *
 * @param day the day it is entered as of
 */
record ImportStep(Place place, LocalDate day, Task task) {

    /** Enters it, through the same façades as the doors. */
    @FunctionalInterface
    interface Task {
        void enter(ImportedIds register);
    }
}
