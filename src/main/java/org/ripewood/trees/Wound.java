package org.ripewood.trees;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cut that has to close, or deadwood by design.
 *
 * @param bearingDegrees seen from above, clockwise from the front; null when not noted
 * @param readings open widths that stand, oldest first
 */
public record Wound(
        long id,
        long treeId,
        String place,
        LocalDate madeOn,
        double firstWidthMm,
        double firstLengthMm,
        @Nullable Double heightMm,
        @Nullable Double bearingDegrees,
        boolean deadwoodByDesign,
        long byId,
        List<Observation> readings) {

    /** The opening read last, or the first width when nobody has read it since. */
    public double openMm() {
        return readings.isEmpty()
                ? firstWidthMm
                : readings.get(readings.size() - 1).value()
                                instanceof org.ripewood.core.progress.Value.Number width
                        ? width.amount()
                        : firstWidthMm;
    }
}
