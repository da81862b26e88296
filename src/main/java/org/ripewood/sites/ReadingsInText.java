package org.ripewood.sites;

import java.util.List;
import org.ripewood.core.season.DayReading;

/**
 * What a file of daily readings held.
 *
 * @param readings one a day, oldest first
 * @param faults lines that were left out as faulty, in the order of lines; the first {@link
 *     #LISTED}
 * @param faultCount how many there were in all
 * @param flagged values left out because their source marked them as doubtful
 * @param incomplete days left out because only one of minimum and maximum was given
 */
record ReadingsInText(
        List<DayReading> readings,
        List<ReadingsFault> faults,
        int faultCount,
        int flagged,
        int incomplete) {

    /** More are counted and not kept: a long file may be wrong in each of its lines. */
    static final int LISTED = 200;

    ReadingsInText {
        readings = List.copyOf(readings);
        faults = List.copyOf(faults);
    }
}
