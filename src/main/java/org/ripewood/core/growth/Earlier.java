package org.ripewood.core.growth;

import java.time.LocalDate;

/** What was measured at the same place before, in millimetres. */
public record Earlier(LocalDate on, double mm) {
    public Earlier {
        if (!(mm >= 0 && mm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a length is not negative, found " + mm);
        }
    }
}
