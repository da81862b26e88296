package org.ripewood.core.supply;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What it takes to fill a volume with a mix.
 *
 * @param fillLitres the volume to be filled
 * @param looseLitres what has to be mixed, since it settles
 * @param orderLitres what is ordered for it
 * @param lines in the order of the mix's parts
 * @param dryKg oven-dry mass
 * @param drainedKg mass after it was watered and drained
 */
public record Batch(
        double fillLitres,
        double looseLitres,
        double orderLitres,
        List<Line> lines,
        Estimate dryKg,
        Estimate drainedKg) {

    /** A hair less than a whole bag is a whole bag and no more. */
    private static final double ROUNDING = 1e-9;

    public Batch {
        lines = List.copyOf(lines);
    }

    /**
     * One component.
     *
     * @param litres to be mixed, loose
     * @param orderLitres to be ordered
     * @param bagsToOpen bags that hold what is mixed; null when it does not come in bags
     * @param bagsToBuy bags that hold what is ordered; null when it does not come in bags
     */
    public record Line(
            Substrate substrate,
            double litres,
            double orderLitres,
            @Nullable Integer bagsToOpen,
            @Nullable Integer bagsToBuy) {

        static Line of(Substrate substrate, double litres, double orderLitres) {
            var bag = substrate.bagLitres();
            return new Line(
                    substrate,
                    litres,
                    orderLitres,
                    bag == null ? null : bags(litres, bag),
                    bag == null ? null : bags(orderLitres, bag));
        }

        private static int bags(double litres, double bagLitres) {
            return (int) Math.ceil(litres / bagLitres - ROUNDING);
        }
    }
}
