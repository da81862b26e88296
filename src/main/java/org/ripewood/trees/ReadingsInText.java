package org.ripewood.trees;

import java.util.List;
import org.ripewood.core.season.DayReading;

/**
 * What a file of daily readings held.
 *
 * @param readings one a day, oldest first
 * @param faults every line that was left out as faulty, in the order of lines
 * @param flagged values left out because their source marked them as doubtful
 * @param incomplete days left out because only one of minimum and maximum was given
 */
record ReadingsInText(
        List<DayReading> readings, List<ReadingsFault> faults, int flagged, int incomplete) {

    ReadingsInText {
        readings = List.copyOf(readings);
        faults = List.copyOf(faults);
    }
}
