package org.ripewood.records;

import org.ripewood.core.progress.Fact;
import org.ripewood.core.progress.Value;

/**
 * One value of a series, checked.
 *
 * @param field where in the series it stands
 * @param seen the same as a single entry
 */
record SeriesEntry(String field, Fact fact, Value value, NewObservation seen) {

    double amount() {
        return value instanceof Value.Number number ? number.amount() : Double.NaN;
    }

    double heightMm() {
        var height = seen.heightMm();
        return height == null ? Double.NaN : height;
    }
}
