package org.ripewood.records;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ripewood.core.growth.Closure;
import org.ripewood.core.growth.WoundEllipse;
import org.ripewood.core.progress.Source;
import org.ripewood.core.progress.Value;

/**
 * A cut that has to close, or deadwood by design.
 *
 * @param bearingDegrees seen from above, clockwise from the front; null when not noted
 * @param source what the one who entered it was, which counts until somebody reads it
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
        Source source,
        List<Observation> readings) {

    /** Those still to close come first, the widest of them leading; deadwood by design last. */
    public static final Comparator<Wound> WIDEST_FIRST =
            Comparator.comparing(Wound::deadwoodByDesign)
                    .thenComparing(Comparator.comparingDouble(Wound::openMm).reversed())
                    .thenComparing(Wound::madeOn)
                    .thenComparingLong(Wound::id);

    public Wound {
        readings = Readings.oldestFirst(readings.stream());
    }

    /** The opening read last, or the first width when nobody has read it since. */
    public double openMm() {
        return closure().latest().openMm();
    }

    /** How it has closed since it was made. */
    public Closure closure() {
        return Closure.of(madeOn, firstWidthMm, readings.stream().map(Wound::look).toList());
    }

    /** Share of the first area still open, were it to close from all sides alike; 0 to 1. */
    public double openAreaShare() {
        double lipMm = Math.max(0, firstWidthMm - openMm()) / 2;
        return new WoundEllipse(firstWidthMm, firstLengthMm).openShare(lipMm);
    }

    private static Closure.Look look(Observation reading) {
        if (reading.value() instanceof Value.Number width) {
            return new Closure.Look(reading.observedOn(), width.amount());
        }
        throw new IllegalStateException("an opening is a width, found " + reading.value());
    }
}
