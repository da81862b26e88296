package org.ripewood.sites;

import java.time.LocalDate;
import java.util.List;

/**
 * What was kept of a file of daily readings, and what was not.
 *
 * @param kept days kept
 * @param changed those of them that are new, or read otherwise than before
 * @param first oldest day kept
 * @param last latest day kept
 * @param faultCount lines left out as faulty
 * @param faults the first 200 of them
 * @param flagged values left out because their source marked them as doubtful
 * @param incomplete days left out because only one of minimum and maximum was given
 */
public record ReadingsImport(
        int kept,
        int changed,
        LocalDate first,
        LocalDate last,
        int faultCount,
        List<ReadingsFault> faults,
        int flagged,
        int incomplete) {

    public ReadingsImport {
        faults = List.copyOf(faults);
    }

    static ReadingsImport of(ReadingsInText found, int changed) {
        var readings = found.readings();
        return new ReadingsImport(
                readings.size(),
                changed,
                readings.get(0).day(),
                readings.get(readings.size() - 1).day(),
                found.faultCount(),
                found.faults(),
                found.flagged(),
                found.incomplete());
    }
}
